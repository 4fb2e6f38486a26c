// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/house_rules.h"

#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <utility>

namespace ferrule {

namespace {

constexpr int kMostLines = 500;

const QString kEigen = "Eigen/";
const QString kJson = "nlohmann/";
const QString kOpenCv = "opencv2/";
const QString kParallel = "tbb/";
const QString kFits = "ceres/";
const QString kMinpack = "unsupported/Eigen/NonLinearOptimization";
const QString kNumericalDiff = "unsupported/Eigen/NumericalDiff";
const QString kResults = "tl/expected.hpp";
const QString kQt = "Q";

struct SourceFile {
  QString path;  ///< from the root
  QStringList lines;
};

QStringList sourcePaths(const QDir& root) {
  QStringList paths;
  for (const char* folder : {"core", "app", "tests", "packaging", ".ci"}) {
    QDirIterator files(root.filePath(folder), QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
    while (files.hasNext())
      paths << root.relativeFilePath(files.next());
  }
  paths << "CMakeLists.txt";
  paths.sort();
  return paths;
}

bool isHeader(const QString& path) {
  return path.endsWith(".h");
}

bool isCode(const QString& path) {
  return isHeader(path) || path.endsWith(".cpp");
}

/// Scripts have no ending; data, pictures and lists have one.
bool carriesLicence(const SourceFile& file) {
  const bool isScript = !file.lines.isEmpty() && file.lines.first().startsWith("#!");
  return isCode(file.path) || file.path.endsWith("CMakeLists.txt") || file.path.endsWith(".cmake") || isScript;
}

SourceFile readSource(const QDir& root, const QString& path) {
  QFile file(root.filePath(path));
  if (!file.open(QIODevice::ReadOnly)) return {path, {}};
  return {path, QString::fromUtf8(file.readAll()).split('\n')};
}

/// "core/table/rack.h" -> "core/table"; "app/review/a/b.h" -> "app".
QString folderOf(const QString& path) {
  const QString top = path.section('/', 0, 0);
  return top == "core" ? path.section('/', 0, 1) : top;
}

bool isStandard(const QString& include) {
  static const QRegularExpression kPlainWord("^[a-z_0-9]+$");
  return kPlainWord.match(include).hasMatch();
}

bool isSystem(const QString& include) {
  static const QRegularExpression kPosix("^(fcntl|unistd|sys/[a-z]+|csignal)\\.?h?$");
  return kPosix.match(include).hasMatch();
}

bool isQt(const QString& include) {
  static const QRegularExpression kQtName("^Q[A-Za-z0-9]+(/.*)?$");
  return kQtName.match(include).hasMatch();
}

bool isWholeQtModule(const QString& include) {
  static const QRegularExpression kModule(
      "^Qt(Core|Gui|Widgets|Sql|Svg|SvgWidgets|Charts|Multimedia|MultimediaWidgets|PrintSupport|OpenGLWidgets)(/.*)?$");
  return kModule.match(include).hasMatch();
}

class Check {
 public:
  Check(const QDir& root, const SourceFile& file, QStringList& findings)
      : root_(root), file_(file), folder_(folderOf(file.path)), findings_(findings) {
    for (const FolderRule& rule : folderRules()) {
      if (rule.folder == folder_) rule_ = rule;
    }
  }

  void run() {
    checkForm();
    if (!isCode(file_.path)) return;
    if (rule_.folder.isEmpty()) return find(0, "lies in a folder that the table of dependencies does not know");
    static const QRegularExpression kInclude(R"(^\s*#\s*include\s*([<"])([^>"]+)[>"])");
    static const QRegularExpression kTranslation(R"((^|[^\w.:>])(QObject::|QCoreApplication::)?(tr|translate)\()");
    // Only what anyone can look up is a source.
    static const QRegularExpression kOurNotes(R"(\b(reference|rules) sheet\b)",
                                              QRegularExpression::CaseInsensitiveOption);
    // Every step that moves a pixel stands in a rig's chain of corrections; these only look, or are such a step.
    static const QRegularExpression kMovesPixels(
        R"(\bcv::(fisheye::)?(undistort\w*|initUndistortRectifyMap|projectPoints|distortPoints|remap|warp\w+|rotate|flip|)"
        R"(transpose|perspectiveTransform|findHomography|getPerspectiveTransform)\s*\()");
    static const QStringList kMayMovePixels{
        "core/vision/film_capture.cpp",    // the chain's rotation
        "core/vision/edge_strip.cpp",      // reads a strip; what is found there goes back the way it came
        "core/vision/mark_survey.cpp",     // reads a patch, likewise
        "core/vision/projected_grid.cpp",  // asks whether a mirrored picture would show more
        "core/vision/tag_survey.cpp",      // asks whether a mirrored picture would show more
        "core/vision/board_finder.cpp",    // the same
    };
    // How long a busy computer may take is one number; a test of its own patience fails on a slower one.
    static const QRegularExpression kOwnPatience(R"(_WITH_TIMEOUT\(|\.wait\(\d*[\d']*\))");
    static const QStringList kPatience{"tests/support/patience.h", "tests/architecture/architecture_test.cpp"};
    bool first = true;
    for (int i = 0; i < file_.lines.size(); ++i) {
      if (folder_ == "tests" && !kPatience.contains(file_.path) && kOwnPatience.match(file_.lines[i]).hasMatch()) {
        find(i + 1, "waits for a time of its own; see tests/support/patience.h");
      }
      const bool product = file_.path.startsWith("core/") || file_.path.startsWith("app/");
      if (product && !kMayMovePixels.contains(file_.path) && kMovesPixels.match(file_.lines[i]).hasMatch()) {
        find(i + 1, "moves pixels outside the chain of corrections");
      }
      if (file_.path.startsWith("core/") && kOurNotes.match(file_.lines[i]).hasMatch()) {
        find(i + 1, "name a publication, or write 'common practice, no source' or 'from memory'");
      }
      const auto include = kInclude.match(file_.lines[i]);
      if (include.hasMatch() && std::exchange(first, false)) checkFirst(i + 1, include.captured(2));
      if (include.hasMatch() && include.captured(1) == "<") {
        checkOutside(i + 1, include.captured(2));
      } else if (include.hasMatch()) {
        checkInside(i + 1, include.captured(2));
      } else if (folder_.startsWith("core/") && kTranslation.match(file_.lines[i]).hasMatch()) {
        find(i + 1, "core translates nothing; return an error code and let app say it");
      }
    }
  }

 private:
  void find(int line, const QString& what) { findings_ << QString("%1:%2: %3").arg(file_.path).arg(line).arg(what); }

  void checkForm() {
    const QStringList head = file_.lines.mid(0, 3);
    if (carriesLicence(file_) && !head.join('\n').contains("SPDX-License-Identifier: GPL-3.0-or-later")) {
      find(1, "has no SPDX line");
    }
    if (isHeader(file_.path) && !file_.lines.contains("#pragma once")) find(1, "has no #pragma once");
    const bool limited = file_.path.startsWith("core/") || file_.path.startsWith("app/");
    if (limited && isCode(file_.path) && file_.lines.size() - 1 > kMostLines) {
      find(kMostLines, QString("is longer than %1 lines").arg(kMostLines));
    }
  }

  /// A source that reads its own header first shows that the header stands alone.
  void checkFirst(int line, const QString& include) {
    if (!file_.path.startsWith("core/") || !file_.path.endsWith(".cpp")) return;
    const QString own = file_.path.chopped(4) + ".h";
    if (include != own && QFileInfo::exists(root_.filePath(own))) find(line, "include " + own + " first");
  }

  void checkInside(int line, const QString& include) {
    if (include.endsWith(".moc") || include.startsWith("ui_")) return;
    static const QRegularExpression kForm("^(core/[a-z]+|app|tests)/[a-z0-9_/]+\\.h$");
    if (!kForm.match(include).hasMatch()) {
      return find(line, QString("\"%1\" is not of the form \"core/part/name.h\"").arg(include));
    }
    if (!QFileInfo::exists(root_.filePath(include))) find(line, QString("\"%1\" does not exist").arg(include));
    const QString target = folderOf(include);
    const bool allowed = target == folder_ || rule_.parts.contains(target) ||
                         (target.startsWith("core/") && rule_.parts.contains("core"));
    if (!allowed) find(line, QString("%1 must not know %2").arg(folder_, target));
  }

  void checkOutside(int line, const QString& include) {
    if (include.startsWith("core/") || include.startsWith("app/") || include.startsWith("tests/")) {
      return find(line, QString("<%1> is ours: write it in quotes").arg(include));
    }
    if (isStandard(include) || isSystem(include)) return;
    if (include.startsWith("QSql") && folder_ != "core/record" && folder_ != "tests") {
      return find(line, QString("only core/record may use <%1>").arg(include));
    }
    if (isWholeQtModule(include) && folder_ != "tests") {
      return find(line, QString("<%1>: include the class, not the module").arg(include));
    }
    if (include.startsWith("opencv2/highgui") || include.startsWith("opencv2/viz")) {
      return find(line, QString("<%1> would bring a second Qt").arg(include));
    }
    const bool allowed = std::any_of(rule_.outside.begin(), rule_.outside.end(), [&](const QString& beginning) {
      return beginning == kQt ? isQt(include) : include.startsWith(beginning);
    });
    if (!allowed) return find(line, QString("%1 must not use <%2>").arg(folder_, include));
    if (include.startsWith(kJson) && folder_.startsWith("core/") && isHeader(file_.path) &&
        !file_.path.endsWith("_json.h")) {
      find(line, "JSON belongs in a .cpp or in a header named ..._json.h");
    }
  }

  const QDir& root_;
  const SourceFile& file_;
  QString folder_;
  FolderRule rule_;
  QStringList& findings_;
};

}  // namespace

QList<FolderRule> folderRules() {
  const QString base = "core/base";
  const QString geometry = "core/geometry";
  const QString table = "core/table";
  const QString physics = "core/physics";
  const QString camera = "core/camera";
  const QString vision = "core/vision";
  const QString rules = "core/rules";
  return {
      {base, {}, {kResults}},
      {geometry, {base}, {kEigen}},
      {table, {base, geometry}, {kEigen, kJson}},
      {physics, {base, geometry, table}, {kEigen, kJson, kParallel, kFits}},
      {camera, {base, geometry, table}, {kEigen, kMinpack, kNumericalDiff, kJson, kOpenCv, kFits}},
      {vision, {base, geometry, table, camera}, {kEigen, kJson, kOpenCv, kParallel, kFits, "libav"}},
      {"core/cue", {base, geometry, table, camera, vision}, {kEigen, kJson, kOpenCv}},
      {"core/reading", {base, geometry, table, physics, camera, vision}, {kEigen, kJson, kParallel, kFits}},
      {rules, {base, geometry, table}, {kJson}},
      {"core/planner", {base, geometry, table, physics}, {kEigen, kJson, kParallel}},
      {"core/record", {base, geometry, table, camera}, {kJson, kQt}},
      {"core/progress", {base, geometry, table}, {kEigen, kJson, "boost/math/"}},
      {"core/drills", {base, geometry, table, "core/progress"}, {kEigen, kJson}},
      {"core/measure", {"core"}, {kEigen, kJson, kOpenCv, kParallel}},
      {"app", {"core"}, {kQt, kJson, kEigen, kOpenCv, "CLI/", "qpdf/"}},
      {"tests", {"core", "app"}, {""}},
  };
}

QStringList houseFindings(const QDir& root) {
  QStringList findings;
  for (const QString& path : sourcePaths(root)) {
    const SourceFile file = readSource(root, path);
    Check(root, file, findings).run();
  }
  return findings;
}

int filesRead(const QDir& root) {
  return static_cast<int>(sourcePaths(root).size());
}

}  // namespace ferrule
