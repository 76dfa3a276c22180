// SPDX-License-Identifier: MIT
#include "desk/chart_import_dialog.h"

#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;
using namespace creaseline::literals;

namespace {

// A preview of a text, with a judge that has nothing against any chart unless told.
class Preview {
 public:
  explicit Preview(const char* text, ChartImportDialog::Verdict verdict = {})
      : dialog_(
            importTable(text, words()), QStringLiteral("a test"), KindForm::Body,
            [verdict](const SizeChart&) { return verdict; }, nullptr) {
    dialog_.show();
  }
  template <class T>
  T& find(const char* name) {
    T* found = dialog_.findChild<T*>(QString::fromLatin1(name));
    CAPTURE(name);
    REQUIRE(found != nullptr);
    return *found;
  }
  void choose(const char* name, const char* text) {
    auto& choice = find<QComboBox>(name);
    choice.setCurrentText(QString::fromUtf8(text));
    REQUIRE(choice.currentText() == QString::fromUtf8(text));
    Q_EMIT choice.activated(choice.currentIndex());
  }
  bool mayTake() { return find<QPushButton>("importTake").isEnabled(); }
  const SizeChart& chart() { return dialog_.chart(); }
  Length width(std::size_t size) { return chart().sizes.at(size).measures.at(Measure::BodyWidth); }

 private:
  static const MeasureWords& words() {
    static const MeasureWords read = loadMeasureWords(resourcesFolder());
    return read;
  }
  ChartImportDialog dialog_;
};

}  // namespace

TEST_CASE("Roles, units and halves are chosen over the columns, and the chart follows",
          "[desk][garments][import]") {
  Preview preview("Size;A;B\nS;100;70\nM;110;72\n");
  CHECK_FALSE(preview.mayTake());
  preview.choose("importRole2", "Pit to pit");
  preview.choose("importRole3", "Body length");
  preview.choose("importUnitOfAll", "centimetres");
  REQUIRE(preview.mayTake());
  CHECK(preview.width(0) == 1000_mm);
  preview.find<QCheckBox>("importGirth2").click();
  CHECK(preview.width(0) == 500_mm);
  preview.choose("importUnit2", "millimetres");
  CHECK(preview.width(0) == 50_mm);
  // Two columns cannot be the same.
  preview.choose("importRole3", "Pit to pit");
  CHECK_FALSE(preview.mayTake());
  CHECK(preview.find<QListWidget>("importProblems")
            .item(0)
            ->text()
            .contains(QStringLiteral("“Pit to pit”")));
}

TEST_CASE("Sizes that stand side by side are turned round, and it says so",
          "[desk][garments][import]") {
  Preview preview("(in)\tS\tM\tL\nBody width\t18\t20\t22\nBody length\t28\t29\t30\n");
  REQUIRE(preview.mayTake());
  CHECK(preview.chart().sizes.size() == 3);
  CHECK(preview.width(2) == 22_in);
}

TEST_CASE("A cell that cannot be read is marked, and mended where it stands",
          "[desk][garments][import]") {
  Preview preview("Size,Body width (in),Body length (in)\nS,18,28\nM,2o,29\n");
  REQUIRE_FALSE(preview.mayTake());
  auto& cells = preview.find<QTableWidget>("importTable");
  const int last = cells.rowCount() - 1;
  CHECK_FALSE(cells.item(last, 1)->icon().isNull());
  CHECK(cells.item(last, 2)->icon().isNull());
  cells.setCurrentCell(last, 1);
  QTest::keyClick(&cells, Qt::Key_F2);
  auto* editor = cells.findChild<QLineEdit*>();
  REQUIRE(editor != nullptr);
  editor->selectAll();
  QTest::keyClicks(editor, QStringLiteral("20"));
  QTest::keyClick(editor, Qt::Key_Return);
  REQUIRE(waitFor([&] { return preview.mayTake(); }));
  CHECK(preview.width(1) == 20_in);
  CHECK(cells.item(last, 1)->icon().isNull());
  cells.item(last, 1)->setText(QStringLiteral("x"));
  CHECK_FALSE(preview.mayTake());
}

TEST_CASE("What the order has against a chart forbids it or is a remark",
          "[desk][garments][import]") {
  const char* table = "Size (in),body-width,body-length\nS,18,28\n";
  CHECK_FALSE(Preview(table, {{{{}, "the neck is too wide"}}, {}}).mayTake());
  Preview remarked(table, {{}, {QStringLiteral("Lines lose XL.")}});
  CHECK(remarked.mayTake());
  CHECK(remarked.find<QLabel>("importSummary").text().contains(QStringLiteral("Lines lose XL.")));
}
