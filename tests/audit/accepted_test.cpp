// Findings that somebody accepted, and lines of the map that still are what was signed.
#include <set>

#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

/// A bare number in a formula that somebody may have reasons for.
BookMaker pump() {
    BookMaker maker;
    maker.sheet("Sump").row(2, "Inflow", 20, "L/s").row(3, "Rows", 3, "each");
    maker.row(5, "Pump", "=C2*1.37", 27.4, "L/s");
    return maker;
}

Report with(const BookMaker& maker, std::vector<audit::Acceptance> accepted) {
    const audit::Book book = maker.made();
    return audit::audit_workbook({.book = book, .accepted = std::move(accepted)});
}

/// The finding about that number accepted.
audit::Acceptance acceptance(const Report& report) {
    const audit::ReportFinding* finding = found(report, FindingKind::bare_number, "C5");
    REQUIRE(finding != nullptr);
    return {finding->mark, "the maker's figure", "A. Checker", "2026-11-27"};
}

std::set<std::string> ticked(const BookMaker& then, const BookMaker& now) {
    const audit::SignedState state = audit::signed_state(audited(then));
    const audit::Book book = now.made();
    std::set<std::string> cells;
    for (const audit::SheetMap& sheet : audit::audit_workbook({.book = book, .at_signing = &state}).map)
        for (const audit::MapLine& line : sheet.lines)
            if (line.ticked) cells.insert(line.target);
    return cells;
}

}  // namespace

TEST_CASE("an accepted finding stays listed and counts no more") {
    const Report before = audited(pump());
    const std::size_t found = before.findings.size();
    REQUIRE(found > 0);
    const Report after = with(pump(), {acceptance(before)});
    CHECK(after.findings.size() == found);
    CHECK(after.counts.accepted == 1);
    CHECK(after.counts.errors + after.counts.warnings + after.counts.notes == found - 1);
    REQUIRE(after.findings.back().accepted);
    CHECK(after.findings.back().accepted->reason == "the maker's figure");
    CHECK(after.found_something() == (found > 1));
    CHECK(audit::console_text(after).find("accepted by A. Checker 2026-11-27: the maker's figure") !=
          std::string::npos);
}

TEST_CASE("without a reason and a name nothing is accepted") {
    audit::Acceptance nobody = acceptance(audited(pump()));
    nobody.name.clear();
    CHECK(with(pump(), {nobody}).counts.accepted == 0);
    audit::Acceptance no_reason = acceptance(audited(pump()));
    no_reason.reason.clear();
    CHECK(with(pump(), {no_reason}).counts.accepted == 0);
}

TEST_CASE("an accepted finding comes back when its cell or what it rests on changes") {
    const audit::Acceptance accepted = acceptance(audited(pump()));
    BookMaker other = pump();
    other.put("C3", 4.0).put("A7", "Drawn by");  // nothing that it rests on
    CHECK(with(other, {accepted}).counts.accepted == 1);
    BookMaker formula = pump();
    formula.row(5, "Pump", "=C2*1.38", 27.6, "L/s");
    CHECK(with(formula, {accepted}).counts.accepted == 0);
    BookMaker input = pump();
    input.put("C2", 21.0);
    CHECK(with(input, {accepted}).counts.accepted == 0);
    BookMaker unit = pump();
    unit.put("D2", "m3/h");
    CHECK(with(unit, {accepted}).counts.accepted == 0);
    BookMaker result = pump();
    result.formula("C5", "=C2*1.37", 27.5);
    CHECK(with(result, {accepted}).counts.accepted == 0);
}

TEST_CASE("a line of the map keeps its tick while formula, inputs and value stay") {
    BookMaker then;
    then.sheet("Bed").row(2, "Length", 40, "m").row(3, "Width", 12, "m").row(4, "Depth", 2, "m");
    then.row(5, "Area", "=C2*C3", 480, "m2")
        .row(6, "Volume", "=C5*C4", 960, "m3")
        .row(7, "Wall", "=C2*C4", 80, "m2");
    CHECK(ticked(then, then) == std::set<std::string>{"Bed.C5", "Bed.C6", "Bed.C7"});
    BookMaker input = then;
    input.put("C3", 13.0).formula("C5", "=C2*C3", 520.0).formula("C6", "=C5*C4", 1040.0);
    CHECK(ticked(then, input) == std::set<std::string>{"Bed.C7"});
    BookMaker formula = then;
    formula.formula("C7", "=2*C2*C4-C2*C4", 80.0);
    CHECK(ticked(then, formula) == std::set<std::string>{"Bed.C5", "Bed.C6"});
    BookMaker other = then;
    other.row(9, "Kerb", 0.1, "m");
    CHECK(ticked(then, other).size() == 3);
}

}  // namespace undercroft::tests
