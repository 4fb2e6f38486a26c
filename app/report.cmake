# SPDX-License-Identifier: GPL-3.0-or-later
# Reports and charts: needs pictures and fonts, but no widgets.
add_library(ferrule_report STATIC
  report/chart_csv.cpp
  report/chart_painter.cpp
  report/pdf_information.cpp
  report/report_builder.cpp
  report/report_charts.cpp
  report/report_csv.cpp
  report/report_first_page.cpp
  report/report_html.cpp
  report/report_pdf.cpp
  report/report_press.cpp
  report/report_sheet.cpp
  report/report_words.cpp
  report/shot_charts.cpp
  window/inks.cpp)
add_library(Ferrule::report ALIAS ferrule_report)
target_include_directories(ferrule_report PUBLIC ${CMAKE_SOURCE_DIR})
target_link_libraries(ferrule_report PUBLIC Ferrule::progress Ferrule::words Qt6::Gui Qt6::Svg)
