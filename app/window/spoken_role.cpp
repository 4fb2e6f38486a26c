// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/spoken_role.h"

#include <QAccessibleWidget>

namespace ferrule {

namespace {

constexpr char kProperty[] = "ferruleSpokenRole";

QAccessibleInterface* faceOf(const QString&, QObject* object) {
  if (object == nullptr || !object->isWidgetType()) return nullptr;
  const QVariant role = object->property(kProperty);
  if (!role.isValid()) return nullptr;
  return new QAccessibleWidget(static_cast<QWidget*>(object), static_cast<QAccessible::Role>(role.toInt()));
}

}  // namespace

void speakAs(QWidget* widget, QAccessible::Role role) {
  // The toolkit asks its factories in turn; one is enough.
  static const bool installed = [] {
    QAccessible::installFactory(faceOf);
    return true;
  }();
  static_cast<void>(installed);
  widget->setProperty(kProperty, static_cast<int>(role));
  // Whatever was told of it before its role was known is told anew.
  if (QAccessibleInterface* known = QAccessible::queryAccessibleInterface(widget); known->role() != role)
    QAccessible::deleteAccessibleInterface(QAccessible::uniqueId(known));
}

}  // namespace ferrule
