// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/pdf_structure.h"

#include <QPainter>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>
#include <functional>
#include <qpdf/Buffer.hh>
#include <qpdf/Pl_Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include "core/base/contract.h"

namespace ferrule {

namespace {

/// No sheet reaches as far, dots.
constexpr double kFarAway = -4'000'000.0;
constexpr double kBegins = 1.0;
constexpr double kEnds = 2.0;

const char* nameOf(PartKind kind) {
  switch (kind) {
    case PartKind::Section:
      return "/Sect";
    case PartKind::Heading1:
      return "/H1";
    case PartKind::Heading2:
      return "/H2";
    case PartKind::Heading3:
      return "/H3";
    case PartKind::Paragraph:
      return "/P";
    case PartKind::Figure:
      return "/Figure";
    case PartKind::Table:
      return "/Table";
    case PartKind::Row:
      return "/TR";
    case PartKind::HeaderCell:
      return "/TH";
    case PartKind::Cell:
      return "/TD";
    case PartKind::Decoration:
      return "/Artifact";
  }
  return "/P";
}

bool runsFromTheRight(const QString& words) {
  return std::ranges::any_of(
      words, [](QChar letter) { return letter.direction() == QChar::DirR || letter.direction() == QChar::DirAL; });
}

/// Where a part stands in the pages' contents.
struct Marked {
  std::size_t node = 0;
  int number = 0;  ///< of the page's marked content
};

/// Copies a page's content, with marked content in place of the marks. A mark is the rectangle far away and its fill,
/// alone or between q, a matrix and Q.
class Marking : public QPDFObjectHandle::TokenFilter {
 public:
  explicit Marking(const std::vector<PdfReadingOrder::Node>& nodes) : nodes_(nodes) {}

  void handleToken(const QPDFTokenizer::Token& token) override {
    using Type = QPDFTokenizer::token_type_e;
    statement_.push_back(token);
    // Everything up to an operator is one statement.
    if (token.getType() != Type::tt_word) return;
    if (const auto found = markIn(statement_)) {
      mark_ = found;
      statement_.clear();
      return;
    }
    if (mark_ && token.getValue() == "f") {
      write(*mark_);
      mark_.reset();
      statement_.clear();
      return;
    }
    flush();
  }

  void handleEOF() override {
    flush();
    // Nothing may stay open at a page's end.
    if (inPart_) write("\nEMC\n");
    inPart_ = false;
  }

  [[nodiscard]] const std::vector<Marked>& marked() const { return marked_; }

 private:
  struct Mark {
    std::size_t node = 0;
    bool begins = false;
  };

  static std::optional<Mark> markIn(const std::vector<QPDFTokenizer::Token>& statement) {
    if (statement.back().getValue() != "re") return std::nullopt;
    std::vector<double> numbers;
    for (const QPDFTokenizer::Token& token : statement) {
      const bool number = token.getType() == QPDFTokenizer::tt_integer || token.getType() == QPDFTokenizer::tt_real;
      // Like the writer, whatever the locale's decimal point is.
      if (number) numbers.push_back(QByteArray::fromStdString(token.getValue()).toDouble());
    }
    if (numbers.size() != 4 || std::abs(numbers[0] - kFarAway) > 0.5) return std::nullopt;
    return Mark{static_cast<std::size_t>(std::llround(numbers[1])), numbers[2] < (kBegins + kEnds) / 2.0};
  }

  void write(const Mark& mark) {
    if (!mark.begins || mark.node >= nodes_.size()) {
      if (inPart_) write("\nEMC\n");
      inPart_ = false;
      return;
    }
    const PartKind kind = nodes_[mark.node].kind;
    if (kind == PartKind::Decoration) {
      write("\n/Artifact BMC\n");
    } else {
      const int number = static_cast<int>(marked_.size());
      marked_.push_back({mark.node, number});
      write("\n" + std::string(nameOf(kind)) + " <</MCID " + std::to_string(number) + ">> BDC\n");
    }
    inPart_ = true;
  }
  void write(const std::string& text) { TokenFilter::write(text); }

  void flush() {
    for (const QPDFTokenizer::Token& token : statement_)
      writeToken(token);
    statement_.clear();
  }

  const std::vector<PdfReadingOrder::Node>& nodes_;
  std::vector<QPDFTokenizer::Token> statement_;
  std::optional<Mark> mark_;
  std::vector<Marked> marked_;
  bool inPart_ = false;
};

QPDFObjectHandle textObject(const QString& text) {
  return QPDFObjectHandle::newUnicodeString(text.toStdString());
}

/// Builds the tree over the marked pages.
class Tree {
 public:
  Tree(QPDF& pdf, const std::vector<PdfReadingOrder::Node>& nodes) : pdf_(pdf), nodes_(nodes) {
    root_ = pdf.makeIndirectObject(QPDFObjectHandle::parse("<</Type /StructTreeRoot>>"));
    document_ = element("/Document", root_);
    root_.replaceKey("/K", document_);
    for (const PdfReadingOrder::Node& node : nodes) {
      if (node.kind == PartKind::Decoration) {
        elements_.push_back(QPDFObjectHandle::newNull());
        continue;
      }
      QPDFObjectHandle parent = node.parent ? elements_[*node.parent] : document_;
      QPDFObjectHandle made = element(nameOf(node.kind), parent);
      if (node.kind == PartKind::Figure) made.replaceKey("/Alt", textObject(node.words));
      if (node.kind != PartKind::Figure && runsFromTheRight(node.words))
        made.replaceKey("/ActualText", textObject(node.words));
      if (node.kind == PartKind::HeaderCell)
        made.replaceKey("/A", QPDFObjectHandle::parse("<</O /Table /Scope /Column>>"));
      append(parent, made);
      elements_.push_back(made);
    }
  }

  void addPage(QPDFObjectHandle page, const std::vector<Marked>& marked) {
    QPDFObjectHandle parents = QPDFObjectHandle::newArray();
    for (const Marked& one : marked) {
      QPDFObjectHandle& owner = elements_[one.node];
      owner.replaceKey("/Pg", page);
      owner.replaceKey("/K", QPDFObjectHandle::newInteger(one.number));
      parents.appendItem(owner);
    }
    page.replaceKey("/StructParents", QPDFObjectHandle::newInteger(pages_));
    page.replaceKey("/Tabs", QPDFObjectHandle::newName("/S"));
    numbers_.appendItem(QPDFObjectHandle::newInteger(pages_++));
    numbers_.appendItem(pdf_.makeIndirectObject(parents));
  }

  QPDFObjectHandle finished() {
    QPDFObjectHandle tree = QPDFObjectHandle::newDictionary();
    tree.replaceKey("/Nums", numbers_);
    root_.replaceKey("/ParentTree", pdf_.makeIndirectObject(tree));
    root_.replaceKey("/ParentTreeNextKey", QPDFObjectHandle::newInteger(pages_));
    return root_;
  }

 private:
  QPDFObjectHandle element(const char* name, QPDFObjectHandle parent) {
    QPDFObjectHandle made = QPDFObjectHandle::newDictionary();
    made.replaceKey("/Type", QPDFObjectHandle::newName("/StructElem"));
    made.replaceKey("/S", QPDFObjectHandle::newName(name));
    made.replaceKey("/P", parent);
    return pdf_.makeIndirectObject(made);
  }

  static void append(QPDFObjectHandle parent, QPDFObjectHandle kid) {
    if (!parent.hasKey("/K")) parent.replaceKey("/K", QPDFObjectHandle::newArray());
    parent.getKey("/K").appendItem(kid);
  }

  QPDF& pdf_;
  const std::vector<PdfReadingOrder::Node>& nodes_;
  QPDFObjectHandle root_;
  QPDFObjectHandle document_;
  std::vector<QPDFObjectHandle> elements_;
  QPDFObjectHandle numbers_ = QPDFObjectHandle::newArray();
  int pages_ = 0;
};

void putInformation(QPDF& pdf, const PdfInformation& information) {
  QPDFObjectHandle info = QPDFObjectHandle::newDictionary();
  const QString date = information.created.toUTC().toString(QStringLiteral("'D:'yyyyMMddHHmmss'Z'"));
  info.replaceKey("/Title", textObject(information.title));
  info.replaceKey("/Author", textObject(information.author));
  info.replaceKey("/Creator", textObject(information.creator));
  info.replaceKey("/Producer", textObject(QStringLiteral("Qt ") + QLatin1String(qVersion())));
  info.replaceKey("/CreationDate", QPDFObjectHandle::newString(date.toStdString()));
  pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(info));
  QPDFObjectHandle root = pdf.getRoot();
  if (!information.language.isEmpty()) root.replaceKey("/Lang", textObject(information.language));
  root.replaceKey("/ViewerPreferences", QPDFObjectHandle::parse("<</DisplayDocTitle true>>"));
}

/// What a glyph stands for, where the writer's answer is not what was typed: a font may share a glyph between blank and
/// tab, ligatures and shaped letters have codes of their own.
QString readable(const QString& letters) {
  if (letters == QLatin1String("\t")) return QStringLiteral(" ");
  const char16_t code = letters.isEmpty() ? u'\0' : letters.front().unicode();
  // Alphabetic presentation forms, Arabic presentation forms A and B. Source: Unicode 15, code charts.
  const bool shaped = (code >= 0xFB00 && code <= 0xFDFF) || (code >= 0xFE70 && code <= 0xFEFE);
  return shaped ? letters.normalized(QString::NormalizationForm_KC) : letters;
}

/// The fonts' tables from glyphs to letters, put right. Source: ISO 32000-1:2008, 9.10.3.
void makeReadable(QPDF& pdf) {
  static const QRegularExpression list(QStringLiteral("\\[[^\\]]*\\]"));
  static const QRegularExpression entry(QStringLiteral("<([0-9A-Fa-f]{4})>"));
  for (QPDFObjectHandle& object : pdf.getAllObjects()) {
    if (!object.isDictionary() || !object.getKey("/ToUnicode").isStream()) continue;
    QPDFObjectHandle stream = object.getKey("/ToUnicode");
    const std::shared_ptr<Buffer> data = stream.getStreamData();
    const QString table =
        QString::fromLatin1(reinterpret_cast<const char*>(data->getBuffer()), static_cast<qsizetype>(data->getSize()));
    QString better;
    qsizetype at = 0;
    for (auto lists = list.globalMatch(table); lists.hasNext();) {
      const auto found = lists.next();
      for (auto entries = entry.globalMatch(table.mid(0, found.capturedEnd()), found.capturedStart());
           entries.hasNext();) {
        const auto one = entries.next();
        better += table.mid(at, one.capturedStart() - at) + QLatin1Char('<');
        const QChar letter(one.captured(1).toUShort(nullptr, 16));
        for (const QChar part : readable(QString(letter)))
          better += QStringLiteral("%1").arg(part.unicode(), 4, 16, QLatin1Char('0')).toUpper();
        better += QLatin1Char('>');
        at = one.capturedEnd();
      }
    }
    better += table.mid(at);
    stream.replaceStreamData(better.toStdString(), QPDFObjectHandle::newNull(), QPDFObjectHandle::newNull());
  }
}

/// The library speaks by exceptions; nothing of them leaves this file.
Result<QByteArray> rewritten(const QByteArray& pdf, const std::function<void(QPDF&)>& change) try {
  QPDF document;
  document.processMemoryFile("report", pdf.constData(), static_cast<std::size_t>(pdf.size()));
  change(document);
  makeReadable(document);
  QPDFWriter writer(document);
  writer.setOutputMemory();
  writer.setMinimumPDFVersion("1.7");
  writer.write();
  const std::shared_ptr<Buffer> written = writer.getBufferSharedPointer();
  return QByteArray(reinterpret_cast<const char*>(written->getBuffer()), static_cast<qsizetype>(written->getSize()));
} catch (const std::exception& error) {
  return failure(ErrorCode::FileMalformed, "PDF", error.what());
}

}  // namespace

void PdfReadingOrder::begin(PartKind kind, const QString& words) {
  FERRULE_REQUIRE(open_.empty() || !isDrawn(nodes_[open_.back()].kind));
  nodes_.push_back({kind, words, open_.empty() ? std::nullopt : std::optional(open_.back())});
  open_.push_back(nodes_.size() - 1);
  if (isDrawn(kind)) mark(open_.back(), true);
}

void PdfReadingOrder::end() {
  FERRULE_REQUIRE(!open_.empty());
  if (isDrawn(nodes_[open_.back()].kind)) mark(open_.back(), false);
  open_.pop_back();
}

void PdfReadingOrder::mark(std::size_t node, bool begins) {
  painter_.save();
  painter_.setPen(Qt::NoPen);
  painter_.setBrush(Qt::black);
  painter_.drawRect(QRectF(kFarAway, static_cast<double>(node), begins ? kBegins : kEnds, 1.0));
  painter_.restore();
}

Result<QByteArray> withStructure(const QByteArray& pdf, const std::vector<PdfReadingOrder::Node>& nodes,
                                 const PdfInformation& information) {
  return rewritten(pdf, [&](QPDF& document) {
    Tree tree(document, nodes);
    for (QPDFPageObjectHelper& page : QPDFPageDocumentHelper(document).getAllPages()) {
      Marking marking(nodes);
      Pl_Buffer content("content");
      page.filterContents(&marking, &content);
      page.getObjectHandle().replaceKey("/Contents", document.newStream(content.getBufferSharedPointer()));
      tree.addPage(page.getObjectHandle(), marking.marked());
    }
    document.getRoot().replaceKey("/StructTreeRoot", tree.finished());
    document.getRoot().replaceKey("/MarkInfo", QPDFObjectHandle::parse("<</Marked true>>"));
    putInformation(document, information);
  });
}

Result<QByteArray> withInformation(const QByteArray& pdf, const PdfInformation& information) {
  return rewritten(pdf, [&](QPDF& document) { putInformation(document, information); });
}

}  // namespace ferrule
