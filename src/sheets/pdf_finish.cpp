// SPDX-License-Identifier: MIT
// Built as C++17, since the headers of qpdf 11 do not compile as C++20; so it includes none of ours
// that need it. Outlines, ViewerPreferences and Lang as in ISO 32000-1, 12.3.3, 12.2 and 14.9.2.
#include "sheets/pdf_finish.h"

#include <qpdf/Pipeline.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include <stdexcept>

#include "creaseline/base/phrasebook.h"

namespace creaseline {

namespace {

// From qpdf into a file of ours, which is replaced in one step.
class DevicePipeline : public Pipeline {
 public:
  explicit DevicePipeline(QIODevice& device) : Pipeline("file", nullptr), device_(device) {}
  void write(const unsigned char* data, std::size_t size) override {
    const auto count = static_cast<qint64>(size);
    if (device_.write(reinterpret_cast<const char*>(data), count) != count) {
      throw std::runtime_error(device_.errorString().toStdString());
    }
  }
  void finish() override {}

 private:
  QIODevice& device_;
};

QPDFObjectHandle textObject(const QString& text) {
  return QPDFObjectHandle::newUnicodeString(text.toStdString());
}

class Outline {
 public:
  explicit Outline(QPDF& pdf) : pdf_(pdf), pages_(QPDFPageDocumentHelper(pdf).getAllPages()) {}

  // Links the items under `parent` in both directions; returns how many there are in all.
  int add(QPDFObjectHandle parent, const std::vector<PdfBookmark>& marks) {
    std::vector<QPDFObjectHandle> items;
    int count = 0;
    for (const PdfBookmark& mark : marks) {
      QPDFObjectHandle item = pdf_.makeIndirectObject(QPDFObjectHandle::newDictionary());
      item.replaceKey("/Title", textObject(mark.title));
      item.replaceKey("/Parent", parent);
      item.replaceKey("/Dest", destination(mark.page));
      const int below = mark.children.empty() ? 0 : add(item, mark.children);
      if (below > 0) {
        // Negative: folded, so that a long set opens with its kinds in view.
        item.replaceKey("/Count", QPDFObjectHandle::newInteger(-below));
      }
      items.push_back(item);
      ++count;
    }
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
      items[i].replaceKey("/Next", items[i + 1]);
      items[i + 1].replaceKey("/Prev", items[i]);
    }
    parent.replaceKey("/First", items.front());
    parent.replaceKey("/Last", items.back());
    return count;
  }

 private:
  QPDFObjectHandle destination(int page) {
    return QPDFObjectHandle::newArray({pages_.at(static_cast<std::size_t>(page)).getObjectHandle(),
                                       QPDFObjectHandle::newName("/Fit")});
  }

  QPDF& pdf_;
  std::vector<QPDFPageObjectHelper> pages_;
};

void addToCatalogue(QPDF& pdf, const std::vector<PdfBookmark>& bookmarks) {
  QPDFObjectHandle root = pdf.getRoot();
  root.replaceKey("/Lang", QPDFObjectHandle::newString(spokenLanguage()));
  QPDFObjectHandle preferences = QPDFObjectHandle::newDictionary();
  preferences.replaceKey("/PrintScaling", QPDFObjectHandle::newName("/None"));
  preferences.replaceKey("/DisplayDocTitle", QPDFObjectHandle::newBool(true));
  root.replaceKey("/ViewerPreferences", preferences);
  // The description that Qt adds repeats the title and the time of writing.
  root.removeKey("/Metadata");
  if (bookmarks.empty()) {
    return;
  }
  QPDFObjectHandle outlines = pdf.makeIndirectObject(QPDFObjectHandle::newDictionary());
  outlines.replaceKey("/Type", QPDFObjectHandle::newName("/Outlines"));
  const int count = Outline(pdf).add(outlines, bookmarks);
  outlines.replaceKey("/Count", QPDFObjectHandle::newInteger(count));
  root.replaceKey("/Outlines", outlines);
  root.replaceKey("/PageMode", QPDFObjectHandle::newName("/UseOutlines"));
}

}  // namespace

void finishPdf(const QString& raw, QIODevice& out, const std::vector<PdfBookmark>& bookmarks) {
  QPDF pdf;
  pdf.processFile(raw.toLocal8Bit().constData());
  addToCatalogue(pdf, bookmarks);
  QPDFObjectHandle information = pdf.getTrailer().getKey("/Info");
  if (information.isDictionary()) {
    information.removeKey("/CreationDate");
    information.removeKey("/ModDate");
  }
  DevicePipeline pipeline(out);
  QPDFWriter writer(pdf);
  writer.setOutputPipeline(&pipeline);
  writer.setDeterministicID(true);
  writer.setMinimumPDFVersion("1.5");
  writer.setObjectStreamMode(qpdf_o_generate);
  writer.write();
}

}  // namespace creaseline
