// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/contract.h"

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>
#include <QtTest>
#include <csignal>

#include "tests/support/test_registry.h"

class ContractTest : public QObject {
  Q_OBJECT
 private slots:
  void aKeptPromiseChangesNothing();
  void aBrokenPromiseEndsTheProgramAndNamesItself();
};

void ContractTest::aKeptPromiseChangesNothing() {
  int evaluations = 0;
  FERRULE_REQUIRE(++evaluations == 1);
  QCOMPARE(evaluations, 1);
}

void ContractTest::aBrokenPromiseEndsTheProgramAndNamesItself() {
  int words[2] = {-1, -1};
  QCOMPARE(::pipe(words), 0);
  const pid_t child = ::fork();
  QVERIFY(child >= 0);
  if (child == 0) {
    const rlimit noCore{0, 0};
    ::setrlimit(RLIMIT_CORE, &noCore);
    // Qt Test's own handler would print a report of a crash that is meant.
    std::signal(SIGABRT, SIG_DFL);
    ::dup2(words[1], STDERR_FILENO);
    FERRULE_REQUIRE(1 + 1 == 3);
    ::_exit(0);
  }
  ::close(words[1]);
  std::string said;
  char piece[256];
  for (ssize_t got = 0; (got = ::read(words[0], piece, sizeof piece)) > 0;)
    said.append(piece, static_cast<std::size_t>(got));
  ::close(words[0]);
  int status = 0;
  QCOMPARE(::waitpid(child, &status, 0), child);
  QVERIFY(WIFSIGNALED(status));
  QCOMPARE(WTERMSIG(status), SIGABRT);
  QVERIFY(said.find("1 + 1 == 3") != std::string::npos);
  QVERIFY(said.find("contract_test.cpp") != std::string::npos);
}

FERRULE_TEST(ContractTest)
#include "contract_test.moc"
