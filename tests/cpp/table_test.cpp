#include "ropewalk/base/table.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <set>
#include <string>
#include <thread>
#include <vector>

namespace ropewalk {
namespace {

constexpr std::string_view two_ropes =
    "# invented numbers\n"
    "construction, diameter [in] ,mass [kg/m],source\r\n"
    "\n"
    "6x19 IWRC , 1.375,5.2e0,nobody\n"
    "  # an aside\n"
    "6x36 WS,-0.5,,nobody";

/// Message of the LookupError that `call` throws; a test failure if it throws none.
template <class Call>
std::string refusal(Call&& call) {
  try {
    call();
  } catch (const LookupError& error) {
    return error.what();
  }
  ADD_FAILURE() << "no LookupError";
  return {};
}

std::string refusal_of_text(std::string_view text) {
  return refusal([&] { const Table read("ropes", text); });
}

void expect_part(const std::string& whole, const std::string& part) {
  EXPECT_NE(whole.find(part), std::string::npos) << '"' << whole << "\" lacks \"" << part << '"';
}

TEST(Table, ReadsTrimmedCellsAndSkipsComments) {
  const Table ropes("ropes", two_ropes);
  EXPECT_EQ(ropes.name(), "ropes");
  EXPECT_EQ(ropes.columns(),
            (std::vector<std::string>{"construction", "diameter [in]", "mass [kg/m]", "source"}));
  ASSERT_EQ(ropes.rows(), 2U);
  EXPECT_EQ(ropes.text(0, "construction"), "6x19 IWRC");
  EXPECT_EQ(ropes.text(1, "source"), "nobody");
  EXPECT_EQ(ropes.line(0), 4U);
  EXPECT_EQ(ropes.line(1), 6U);
}

TEST(Table, ReadsNumbersAndGivesNanForAnEmptyCell) {
  const Table ropes("ropes", two_ropes);
  EXPECT_EQ(ropes.number(0, "diameter [in]"), 1.375);
  EXPECT_EQ(ropes.number(0, "mass [kg/m]"), 5.2);
  EXPECT_TRUE(std::isnan(ropes.number(1, "mass [kg/m]")));
  EXPECT_EQ(ropes.numbers("diameter [in]"), (std::vector<double>{1.375, -0.5}));
}

TEST(Table, RefusesRaggedRowsNamingFileAndLine) {
  expect_part(refusal_of_text("a,b\n1,2\n1,2,3\n"), "ropes.csv:3: the row has 3 cells");
  expect_part(refusal_of_text("# c\na,b\n\n1\n"),
              "ropes.csv:4: the row has 1 cells, the header has 2");
}

TEST(Table, RefusesBadHeaders) {
  expect_part(refusal_of_text(""), "no header");
  expect_part(refusal_of_text("# only a comment\n"), "ropes.csv:1: the table has no header");
  expect_part(refusal_of_text("a,b,a\n"), "two columns a");
  expect_part(refusal_of_text("a,,b\n"), "a column has no name");
}

TEST(Table, RefusesWhatItDoesNotHave) {
  const Table ropes("ropes", two_ropes);
  expect_part(refusal([&] { (void)ropes.text(0, "grade"); }), "'diameter [in]'");
  expect_part(refusal([&] { (void)ropes.text(2, "source"); }), "no row 2");
  expect_part(refusal([&] { (void)ropes.number(0, "construction"); }),
              "ropes.csv:4: column construction: '6x19 IWRC' is not a finite number");
  for (const std::string bad : {"1.5x", "inf", "nan", "1 2", "1e999", "+1"}) {
    const Table one("ropes", "a\n" + bad + "\n");
    expect_part(refusal([&] { (void)one.number(0, "a"); }), "is not a finite number");
  }
  expect_part(refusal([] { (void)table("no such table"); }), "there is no table no such table");
}

TEST(EmbeddedTables, AllReadTheSameFromAnyThread) {
  ASSERT_FALSE(embedded_files().empty());
  for (const auto& file : embedded_files()) {
    std::vector<const Table*> seen(4);
    {
      std::vector<std::jthread> threads;
      for (auto& place : seen) threads.emplace_back([&] { place = &table(file.name); });
    }
    EXPECT_EQ(std::set(seen.begin(), seen.end()).size(), 1U) << file.name;
    EXPECT_GT(seen.front()->rows(), 0U) << file.name;
    EXPECT_EQ(embedded_file(file.name), file.text);
  }
}

/// Keys of sources.csv; each may stand there once, with a citation.
std::set<std::string_view> source_keys() {
  const Table& sources = table("sources");
  std::set<std::string_view> keys;
  for (std::size_t row = 0; row < sources.rows(); ++row) {
    EXPECT_TRUE(keys.insert(sources.text(row, "key")).second) << "twice: " << row;
    EXPECT_FALSE(sources.text(row, "citation").empty()) << "line " << sources.line(row);
  }
  return keys;
}

// A table has the columns `source` and `standing` for a whole row, or `x_source` and `x_standing`
// for its column x. The cells of such a pair may be empty only where x has no value.
TEST(EmbeddedTables, EveryValueSaysItsSourceAndItsStanding) {
  const auto keys = source_keys();
  const std::set<std::string_view> standings{"published", "from memory", "derived",
                                             "common practice"};
  for (const auto& file : embedded_files()) {
    if (file.name == "sources") continue;
    const Table& rows = table(file.name);
    int pairs = 0;
    for (const std::string_view column : rows.columns()) {
      if (!column.ends_with("source")) continue;
      ++pairs;
      const std::string subject(column.substr(0, column.size() - 6));
      for (std::size_t row = 0; row < rows.rows(); ++row) {
        const auto source = rows.text(row, column);
        const auto standing = rows.text(row, subject + "standing");
        const bool empty = !subject.empty() && source.empty() && standing.empty();
        EXPECT_TRUE(empty || (keys.contains(source) && standings.contains(standing)))
            << file.name << ".csv:" << rows.line(row) << ": '" << source << "', '" << standing
            << "'";
      }
    }
    EXPECT_GT(pairs, 0) << file.name;
  }
}

}  // namespace
}  // namespace ropewalk
