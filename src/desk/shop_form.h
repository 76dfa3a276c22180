// SPDX-License-Identifier: MIT
// One part of the shop as a form. Each field shows a text of the shop, and makes a changed shop of
// what is typed; what could not be saved is refused beside the field.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QWidget>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "desk/field_edit.h"
#include "desk/form_parts.h"
#include "desk/shop_edits.h"
#include "desk/tick_menu.h"

namespace creaseline::desk {

// What a form of the shop shows: never null in it.
struct ShownShop {
  std::shared_ptr<const Shop> shop;
  std::shared_ptr<const Rules> rules;
  UnitChoice units;
};

class ShopForm : public QWidget {
  Q_OBJECT

 public:
  explicit ShopForm(QWidget* parent = nullptr);

  // `entry`: of the form's list, if it has one.
  void show(const ShownShop& shown, std::size_t entry = 0);
  void showNothing();

 Q_SIGNALS:
  void edited(const creaseline::desk::ShopEdit& edit);

 protected:
  // Changes the shop, or says why not.
  using Put = std::function<std::optional<QString>(Shop&, const QString&)>;
  using Show = std::function<QString(const Shop&)>;

  // "Frame 5 × 7 in", for the names of steps.
  [[nodiscard]] virtual QString subject() const = 0;
  // For what follows the shop beside the fields.
  virtual void shown() {}

  [[nodiscard]] const Shop& shop() const { return *shown_.shop; }
  [[nodiscard]] const Rules& rules() const { return *shown_.rules; }
  [[nodiscard]] const UnitChoice& units() const { return shown_.units; }
  [[nodiscard]] std::size_t entry() const { return entry_; }
  [[nodiscard]] bool showsShop() const { return shown_.shop != nullptr; }

  // `label` stands before the field and holds its shortcut; `words` are for screen readers.
  FieldEdit* addField(const char* name, const QString& label, const QString& words,
                      const Show& show, const Put& put);
  using Choice = TickMenu::Choice;
  QComboBox* addChoice(const char* name, const QString& label, const QString& words,
                       const std::function<std::vector<Choice>()>& choices, const Show& shownKey,
                       const Put& put);
  QCheckBox* addTick(const char* name, const QString& label, const QString& words,
                     const std::function<bool(const Shop&)>& ticked,
                     const std::function<void(Shop&, bool)>& put);
  TickMenu* addTicks(const char* name, const QString& label, const QString& words,
                     const QString& any,
                     const std::function<std::vector<TickMenu::Choice>()>& choices,
                     const std::function<QStringList(const Shop&)>& ticked,
                     const std::function<void(Shop&, const QStringList&)>& put);
  // A heading over the fields that follow.
  void addHeading(const QString& words);
  void addRow(QWidget* whole) { form_->addRow(whole); }

  // Puts for lengths: from `least` to the largest part of a file, in the units chosen.
  template <class Take>
  [[nodiscard]] Put lengthPut(Length least, Take take) const {
    return [this, least, take](Shop& shop, const QString& text) -> std::optional<QString> {
      const Result<Length> length = readLength(text, least);
      return length ? take(shop, *length) : problemOf(length);
    };
  }
  // A field for a length that may be left empty. `at`: the optional length in a shop, const or not.
  template <class At>
  FieldEdit* addOwnLength(const char* name, const QString& label, const QString& words, At at,
                          Length least = {}) {
    return addField(
        name, label, words,
        [this, at](const Shop& shop) {
          const std::optional<Length>& length = at(shop);
          return length ? lengthText(*length) : QString();
        },
        [this, at, least](Shop& shop, const QString& text) -> std::optional<QString> {
          std::optional<Length>& length = at(shop);
          if (text.isEmpty()) {
            length.reset();
            return std::nullopt;
          }
          const Result<Length> read = readLength(text, least);
          if (read) {
            length = *read;
          }
          return problemOf(read);
        });
  }
  [[nodiscard]] QString lengthText(Length length) const;
  [[nodiscard]] Result<Length> readLength(const QString& text, Length least) const;

 private:
  [[nodiscard]] std::optional<QString> problemWith(const Put& put, const QString& text) const;
  void change(const Put& put, const QString& label, const QString& text, const QString& said);

  ShownShop shown_;
  std::size_t entry_ = 0;
  QFormLayout* form_ = nullptr;
  std::vector<std::function<void()>> followers_;  // bring the fields up to date
};

}  // namespace creaseline::desk
