// SPDX-License-Identifier: MIT
// The parts of a shop, each as a form.
#pragma once

#include "desk/frame_picture.h"
#include "desk/window_fields.h"

namespace creaseline::desk {

// Name, units, and how far off a hooped garment may be.
class ShopHeadForm : public ShopForm {
  Q_OBJECT

 public:
  explicit ShopHeadForm(QWidget* parent = nullptr);

 protected:
  [[nodiscard]] QString subject() const override { return tr("Shop"); }
  void shown() override;

 private:
  void addUnits();
  void addJudgedError();
  FieldEdit* addErrorLength(const char* name, const QString& label, const QString& words,
                            Length HoopingError::*length);
  void addError(const char* name, const QString& label, const QString& words,
                std::optional<Length> Shop::*length, const DefaultValue Defaults::*shipped);

  std::vector<FieldEdit*> judged_;  // of use only where the shop judges its error itself
  std::vector<std::pair<FieldEdit*, const DefaultValue Defaults::*>> shipped_;
};

class FrameForm : public WindowedForm {
  Q_OBJECT

 public:
  explicit FrameForm(QWidget* parent = nullptr);

 protected:
  [[nodiscard]] QString subject() const override;
  void shown() override;

 private:
  void addMargins();
  void addWays();
  FramePicture* picture_ = nullptr;
  FieldEdit* clearance_ = nullptr;
};

class MachineForm : public WindowedForm {
  Q_OBJECT

 public:
  explicit MachineForm(QWidget* parent = nullptr);

 protected:
  [[nodiscard]] QString subject() const override;
};

class StockForm : public ShopForm {
  Q_OBJECT

 public:
  explicit StockForm(QWidget* parent = nullptr);

 protected:
  [[nodiscard]] QString subject() const override;
  void shown() override;

 private:
  void addPrice();
  FieldEdit *sheets_ = nullptr, *price_ = nullptr;
};

// Of topping there is only one kind, in stock or not.
class ToppingForm : public ShopForm {
  Q_OBJECT

 public:
  explicit ToppingForm(QWidget* parent = nullptr);

 protected:
  [[nodiscard]] QString subject() const override { return tr("Shop"); }
};

class NeedleForm : public ShopForm {
  Q_OBJECT

 public:
  explicit NeedleForm(QWidget* parent = nullptr);

 protected:
  [[nodiscard]] QString subject() const override;
};

class MeasuredHoopingForm : public ShopForm {
  Q_OBJECT

 public:
  explicit MeasuredHoopingForm(QWidget* parent = nullptr);

 protected:
  [[nodiscard]] QString subject() const override;
};

class HouseRuleForm : public ShopForm {
  Q_OBJECT

 public:
  explicit HouseRuleForm(QWidget* parent = nullptr);

 protected:
  [[nodiscard]] QString subject() const override;

 private:
  void addScope();
  void addDistances();
  void addSizes();
};

}  // namespace creaseline::desk
