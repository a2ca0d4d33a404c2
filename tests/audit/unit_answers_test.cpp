// The answer about the units of a formula, for every operator, function and way to hand over an argument:
// tests/data/unit-answers.txt.
#include "addin/audit/findings/finding.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "tests/audit/audited.hpp"
#include "tests/support/files.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

namespace {

/// Numbers of many kinds, one a row with its unit; tables with a row of units, and with a unit beside each
/// number.
BookMaker many_kinds() {
    BookMaker maker;
    maker.sheet("S").put("A1", "Description").put("C1", "Value").put("D1", "Unit");
    maker.row(2, "Length", 40, "m").row(3, "Width", 12, "m").row(4, "Depth", 305, "mm");
    maker.row(5, "Volume", 146.4, "m3").row(6, "Slope", 34, "deg").row(7, "Angle", 0.6, "rad");
    maker.row(8, "Share", 40, "%").row(9, "Units", 8, "each").row(10, "Ratio", 1.5, "1");
    maker.put("A11", "Rows").put("C11", 7.0).put("A12", "State").put("C12", "open");
    maker.put("A13", "Broken").formula("C13", "=1/0", Error{532}).put("D13", "m");
    maker.put("A14", "Lost").formula("C14", "=1/0", Error{532}).put("A15", "Later").put("D15", "m");
    maker.row(16, "Price", 85, "AUD").row(17, "Soil", 18, "kN/m3").row(18, "Flow", 20, "L/s");
    maker.row(19, "Time", 10, "min").row(20, "Odd", 3, "metre-ish");
    maker.put("A21", "Starts").put("C21", 46328.0).put("A22", "Ends").put("C22", 46378.0);
    for (const char* day : {"C21", "C22"}) maker.shown_as(day, {.shown_as = audit::ShownAs::date});
    maker.row(23, "Lead", 3, "wk").row(24, "Takes", 5, "d");
    maker.put("G1", "Stage").put("H1", "Volume").put("I1", "Note").put("G2", "m").put("H2", "m3");
    maker.put("L1", "Stage").put("M1", "Flow").put("L2", "m").put("M2", "L/s");
    for (int row = 3; row <= 5; ++row) {
        const std::string at = std::to_string(row);
        maker.put("G" + at, 1.0 * row).put("H" + at, 10.0 * row).put("I" + at, 2.0);
        maker.put("L" + at, 1.0 * row).put("M" + at, 5.0 * row);
    }
    maker.put("O1", "Thickness").put("Q1", "Weight");
    maker.put("O2", 300.0).put("P2", "mm").put("Q2", 16.0).put("R2", "kN/m3");
    maker.put("O3", 0.5).put("P3", "m").put("Q3", 19.0).put("R3", "kN/m3");
    maker.put("O4", 0.5).put("P4", "m").put("Q4", 19.0);
    maker.put("O5", 0.5).put("P5", "kN").put("Q5", 19.0).put("R5", "kN/m3");
    maker.sheet("Other").put("A2", "Length").put("B2", 3.0).put("C2", "m").sheet("S");
    maker.name("bed", "$S.$C$2:$D$2").name("both", "$S.$C$2:$C$4");
    maker.name("sum_of", "$S.$C$2+$S.$C$3").name("round", "round+1");
    return maker;
}

std::string answer(const Report& report) {
    const audit::MapLine* line = line_at(report, "C30");
    return line == nullptr ? "no answer" : audit::text_of(line->verdict) + ": " + line->reason;
}

std::string unit_findings(const Report& report) {
    std::vector<std::string> kinds;
    for (const audit::ReportFinding& finding : report.findings) {
        const bool about_units =
            finding.kind == FindingKind::unit_clash || finding.kind == FindingKind::passed_bare ||
            finding.kind == FindingKind::unit_left_out || finding.kind == FindingKind::bare_number;
        if (about_units && finding.first == spot_of("C30")) kinds.emplace_back(audit::word_of(finding.kind));
    }
    return joined(kinds, " ");
}

/// Holds every line of the list against the answer to its formula.
void check_answers() {
    std::size_t rows = 0;
    for (const std::string& line : split(file_text("tests/data/unit-answers.txt"), '\n')) {
        if (line.empty() || line[0] == '#') continue;
        const std::vector<std::string> fields = split(line, '|');
        REQUIRE(fields.size() == 4);
        BookMaker maker = many_kinds();
        maker.put("A30", "Result").formula("C30", fields[0], 1.0);
        if (!fields[1].empty()) maker.put("D30", fields[1]);
        const Report report = audited(maker);
        CAPTURE(fields[0], fields[1]);
        CHECK(answer(report) == fields[2]);
        CHECK(unit_findings(report) == fields[3]);
        ++rows;
    }
    CHECK(rows > 350);
}

/// While it lives, the texts that people read of every function say something else.
class Reworded {
public:
    Reworded() {
        for (addin::Function& function : functions_) {
            for (std::string* text : {&function.says, &function.equation, &function.source, &function.caution,
                                      &function.outcome.says})
                *text = other_words(function.name);
            for (addin::Parameter& parameter : function.parameters)
                parameter.says = other_words(parameter.name);
        }
    }
    ~Reworded() { functions_ = before_; }
    Reworded(const Reworded&) = delete;
    Reworded& operator=(const Reworded&) = delete;

private:
    static std::string other_words(const std::string& name) {
        return "a table of columns of " + name + ", a unit, the same as UC.TOTAL takes in m3";
    }
    // The functions themselves are no constants.
    std::vector<addin::Function>& functions_ =
        const_cast<std::vector<addin::Function>&>(addin::all_functions());
    std::vector<addin::Function> before_ = functions_;
};

}  // namespace

TEST_CASE("units are answered as the list says") {
    check_answers();
}

TEST_CASE("rewording every text of every function changes no answer about units") {
    const Reworded reworded;
    REQUIRE(addin::find_function("UC.TOTAL")->says.starts_with("a table of columns of UC.TOTAL"));
    check_answers();
}

}  // namespace undercroft::tests
