// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>

namespace ferrule {

/// The desktop's style, with frames of boxes and fields that can be seen on a dark page too: a style that darkens the
/// page's colour for them leaves none there. 3:1 against what lies inside. Source: Web content accessibility guidelines
/// 2.1, 1.4.11.
class FrameStyle : public QProxyStyle {
  Q_OBJECT
 public:
  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
};

}  // namespace ferrule
