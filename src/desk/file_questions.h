// SPDX-License-Identifier: MIT
// Questions for files, each asked in one way wherever it is asked.
#pragma once

#include <QString>
#include <QWidget>
#include <optional>
#include <string_view>

#include "creaseline/catalogue/load.h"

namespace creaseline::desk {

// Where to save; empty if the user thinks better of it. `proposed`: a whole path. `ending`, such as
// ".order.json", goes behind a name that is typed without ".json".
[[nodiscard]] QString askWhereToSave(QWidget* parent, const QString& title, const QString& proposed,
                                     const QString& filter, const QString& ending);

// A name or id as that of a file: what folders do not take becomes a hyphen.
[[nodiscard]] QString fileNameFor(std::string_view name, const QString& ending);

// What is in a file that is asked for, looked for first in `folder`; nothing if the user thinks
// better of it. Throw InputError if it cannot be read.
[[nodiscard]] std::optional<Loaded<Blank>> askForGarment(QWidget* parent, const QString& folder,
                                                         const Rules& rules);
[[nodiscard]] std::optional<Loaded<Design>> askForDesign(QWidget* parent, const QString& folder);

}  // namespace creaseline::desk
