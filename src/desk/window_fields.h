// SPDX-License-Identifier: MIT
// A form of the shop with windows in it: shape, sides and corners of a frame's inside or outside,
// or of a sewing field.
#pragma once

#include <functional>

#include "desk/shop_form.h"

namespace creaseline::desk {

class WindowedForm : public ShopForm {
  Q_OBJECT

 public:
  using ShopForm::ShopForm;

 protected:
  struct WindowAccess {
    std::function<const Window*(const Shop&)> get;  // null: there is none, the fields stay empty
    std::function<void(Shop&, const Window&)> set;
  };
  // `name`: object names begin with it; `what`: "window", for screen readers.
  void addWindow(const char* name, const QString& heading, const QString& what,
                 const WindowAccess& access);

 private:
  void addSide(const QString& name, const QString& label, const QString& words,
               const WindowAccess& access, bool width);
};

}  // namespace creaseline::desk
