// The whole report: counts, map, fingerprint and signatures, and its texts.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

/// Not for signing: the office brings a real one.
std::string toy_digest(std::string_view text) {
    return std::to_string(std::hash<std::string_view>{}(text));
}

BookMaker area() {
    BookMaker maker;
    maker.sheet("Pit");
    maker.row(2, "Length", 40, "m").row(3, "Width", 12, "m");
    maker.row(4, "Area of the base", "=UC.PRODUCT(C2:D2;C3:D3;D4)", 480, "m2");
    return maker;
}

Report signed_report(const BookMaker& maker, std::vector<audit::Signature> signatures = {}) {
    const audit::Book book = maker.made();
    return audit::audit_workbook({.book = book, .digest = toy_digest, .signatures = std::move(signatures)});
}

/// Rows and fields of a table by RFC 4180.
std::vector<std::vector<std::string>> parsed(const std::string& csv) {
    std::vector<std::vector<std::string>> rows(1, {""});
    bool quoted = false;
    for (std::size_t i = 0; i < csv.size(); ++i) {
        const char c = csv[i];
        if (c == '"' && quoted && i + 1 < csv.size() && csv[i + 1] == '"') {
            rows.back().back() += c;
            ++i;
        } else if (c == '"') {
            quoted = !quoted;
        } else if (c == ',' && !quoted) {
            rows.back().emplace_back();
        } else if (c == '\r' && !quoted && csv[i + 1] == '\n') {
            ++i;
            if (i + 1 < csv.size()) rows.push_back({""});
        } else {
            rows.back().back() += c;
        }
    }
    return rows;
}

}  // namespace

TEST_CASE("the map shows a formula as typed, with what it rests on and where it comes from") {
    const Report report = audited(area());
    const audit::MapLine* line = line_at(report, "C4");
    REQUIRE(line != nullptr);
    CHECK(line->label == "Area of the base");
    CHECK(line->formula == "=UC.PRODUCT(C2:D2;C3:D3;D4)");
    CHECK(line->value == "480");
    CHECK(line->unit == "m2");
    CHECK_FALSE(line->equation.empty());
    CHECK(line->inputs.find("C2:D2 = 40 m") != std::string::npos);
    CHECK(report.counts.with_own == 1);
    CHECK_FALSE(report.found_something());
}

TEST_CASE("cells of one formula with different answers stand on lines of their own") {
    BookMaker maker;
    for (int row = 1; row <= 4; ++row) {
        const std::string at = std::to_string(row);
        maker.put("A" + at, 1.0)
            .put("B" + at, row == 3 ? "kg" : "m")
            .formula("C" + at, "=A" + at + "*2", 2.0);
        maker.put("D" + at, "m");
    }
    const Report report = audited(maker);
    REQUIRE(report.map.size() == 1);
    CHECK(report.counts.distinct == 1);
    CHECK(report.map[0].lines.size() == 2);
    CHECK((line_at(report, "C3")->verdict == UnitVerdict::inconsistent));
}

TEST_CASE("the fingerprint changes with all that a checker looked at, and is told by kind") {
    const audit::Fingerprint at_signing = signed_report(area()).fingerprint;
    CHECK_FALSE(at_signing.whole.empty());
    const auto state_after = [&](const BookMaker& maker) {
        const Report report = signed_report(maker, {{"A. Checker", "2026-11-25", at_signing}});
        CHECK((report.fingerprint.whole == at_signing.whole) ==
              (count_of(report, FindingKind::signature) == 0));
        return report.signatures[0].state;
    };
    CHECK(state_after(area()) == "the workbook is what was signed");
    BookMaker maker = area();
    maker.put("C2", 40.000001);
    CHECK(state_after(maker) == "changed since: inputs in Pit");
    maker = area();
    maker.put("D2", "ft");
    CHECK(state_after(maker) == "changed since: units and texts in Pit");
    maker = area();
    maker.formula("C4", "=UC.PRODUCT(C3:D3;C2:D2;D4)", 480.0);
    CHECK(state_after(maker) == "changed since: formulas in Pit");
    maker = area();
    maker.formula("C4", "=UC.PRODUCT(C2:D2;C3:D3;D4)", 481.0);
    CHECK(state_after(maker) == "changed since: results in Pit");
    maker = area();
    maker.formula("C4", "=UC.PRODUCT(C2:D2;C3:D3;D4)", 480.0 * (1 + 1e-15));  // another computer
    CHECK(state_after(maker) == "the workbook is what was signed");
    maker = area();
    maker.name("length", "$Pit.$C$2:$D$2");
    CHECK(state_after(maker) == "changed since: names");
    maker = area();
    maker.raw().hidden_rows.insert(2);
    CHECK(state_after(maker) == "changed since: what is hidden in Pit");
    maker = area();
    maker.raw().flat_rows.insert(2);
    CHECK(state_after(maker) == "changed since: what is hidden in Pit");
    maker = area();
    maker.raw().merged.push_back({0, 1, 1, 1, 2});
    CHECK(state_after(maker) == "changed since: what is hidden in Pit");
    maker = area();
    maker.raw().formats[0].unseen = true;
    CHECK(state_after(maker) == "changed since: what is hidden in Pit");
    maker = area();
    maker.raw().comments.push_back({1, 2, "as agreed"});
    CHECK(state_after(maker) == "changed since: comments in Pit");
    maker = area();
    maker.protect();
    CHECK(state_after(maker) == "changed since: protection in Pit");
    maker = area();
    maker.raw().formats[0].words = "[=0]\"PASS\"";
    CHECK(state_after(maker) == "changed since: formats in Pit");
    maker = area();
    maker.book().rounds_to_shown = true;
    CHECK(state_after(maker) == "changed since: settings and properties");
    maker = area();
    maker.book().null_date = "1904-01-01";
    CHECK(state_after(maker) == "changed since: settings and properties");
    maker = area();
    maker.book().macros = {"Standard.Module1 Sub Main"};
    CHECK(state_after(maker) == "changed since: macros");
    maker = area();
    maker.sheet("Flow; east").put("A1", 2.0);
    CHECK(state_after(maker) == "changed since: the order of the sheets; the sheet Flow; east is new");
    maker = area();
    maker.style("C4", "Bold");  // a look that says nothing
    CHECK(state_after(maker) == "the workbook is what was signed");
}

TEST_CASE("a sentence is signed by its words, since each country writes numbers its own way") {
    const auto whole = [](const char* sentence) {
        BookMaker maker = area();
        maker.formula("C6", "=C2&\" m\"", std::string(sentence));
        return signed_report(maker).fingerprint.whole;
    };
    const std::string here = whole("0.70 m < 0.75 m, 7 %");
    CHECK(whole("0,70 m < 0,75 m, 7 %") == here);
    CHECK(whole("\u0660\u066B\u0667\u0660 m < \u0660\u066B\u0667\u0665 m, \u0667 \u066A") == here);
    CHECK(whole("0.70 m > 0.75 m, 7 %") != here);
    CHECK(whole("0.70 ft < 0.75 m, 7 %") != here);
}

TEST_CASE("the parts of a fingerprint are kept as text, whatever a sheet is called") {
    BookMaker maker = area();
    maker.sheet("Bed; 50% east").put("A1", 2.0);
    const audit::Fingerprint made = signed_report(maker).fingerprint;
    CHECK(audit::parts_of_text(audit::text_of_parts(made)) == made.parts);
    CHECK(audit::parts_of_text("").empty());
}

TEST_CASE("a signature of our first release is judged as it was made") {
    const audit::Book book = area().made();
    audit::Fingerprint then = audit::fingerprint(book, toy_digest);
    then.whole = toy_digest(audit::canonical_text(book));
    then.parts.clear();
    CHECK(signed_report(area(), {{"A. Checker", "", then}}).signatures[0].state ==
          "the workbook is what was signed");
    BookMaker maker = area();
    maker.put("C2", 41.0);
    CHECK(signed_report(maker, {{"A. Checker", "", then}}).signatures[0].state == "changed since: Pit");
}

TEST_CASE("a signature holds until something changes; then the sheet is named") {
    BookMaker maker = area();
    maker.sheet("Flow").put("A1", 1.0);
    const audit::Fingerprint at_signing = signed_report(maker).fingerprint;
    const audit::Signature signature{"A. Checker", "2026-11-25", at_signing};
    const Report same = signed_report(maker, {signature});
    CHECK(count_of(same, FindingKind::signature) == 0);
    REQUIRE(same.signatures.size() == 1);
    CHECK(same.signatures[0].state == "the workbook is what was signed");
    maker.put("A1", 2.0);
    const Report changed = signed_report(maker, {signature});
    CHECK(count_of(changed, FindingKind::signature) == 1);
    CHECK(changed.signatures[0].state == "changed since: inputs in Flow");
    const audit::Signature newer{"B. Checker", "2026-11-26", signed_report(maker).fingerprint};
    CHECK(count_of(signed_report(maker, {signature, newer}), FindingKind::signature) == 0);  // signed again
}

TEST_CASE("the Audit sheet is no part of an audit") {
    const Report before = signed_report(area());
    BookMaker maker = area();
    maker.sheet("Audit").put("A1", audit::audit_sheet_title).put("B2", 5.0).put("C2", "metre-ish");
    maker.formula("B3", "=HYPERLINK(\"#Pit.C4\";\"Pit.C4\")", "Pit.C4").name("found", "$Audit.$A$1", 1);
    const Report after = signed_report(maker);
    INFO(audit::console_text(after));
    CHECK(after.findings.empty());
    CHECK(after.counts.formulas == before.counts.formulas);
    CHECK(after.fingerprint.whole == before.fingerprint.whole);
    CHECK(after.map.size() == 1);
    maker.sheet("Pit").formula("C6", "=Audit.B2*C2", 200.0);
    CHECK((found(signed_report(maker), FindingKind::blank_reference, "C6") != nullptr));
}

TEST_CASE("a sheet called Audit that no audit wrote is audited and signed like any other") {
    const auto with_sheet = [](double value, const char* title, const char* formula) {
        BookMaker maker = area();
        maker.sheet("Audit").put("A1", title).put("B2", value).formula("B3", formula, value * 2);
        return signed_report(maker);
    };
    for (const auto& [title, formula] : std::vector<std::pair<const char*, const char*>>{
             {"Findings", "=HYPERLINK(\"#Pit.C4\";\"x\")"}, {audit::audit_sheet_title, "=B2*2"}}) {
        CAPTURE(title, formula);
        const Report small = with_sheet(382, title, formula);
        CHECK(small.counts.formulas == signed_report(area()).counts.formulas + 1);
        CHECK(small.fingerprint.whole != with_sheet(3004, title, formula).fingerprint.whole);
        CHECK(small.fingerprint.sheets.size() == 2);
    }
}

TEST_CASE("the Audit sheet may stand anywhere: no cell moves by it") {
    BookMaker maker;
    maker.sheet("Audit").put("A1", audit::audit_sheet_title);
    maker.sheet("Pit");
    maker.row(2, "Length", 40, "m").row(3, "Width", 12, "m").row(4, "Sum", "=C2+C3+5", 57, "m");
    const Report report = audited(maker);
    REQUIRE(report.findings.size() == 1);
    CHECK(report.findings[0].cells == "Pit.C4");
    CHECK((report.findings[0].first == audit::Spot{1, 3, 2}));
}

TEST_CASE("findings come gravest first, and the verdict counts them") {
    BookMaker maker = area();
    maker.put("A5", "Spare").put("C5", 3.0).put("D5", "m").formula("C6", "=C2+C4", 520.0);
    const Report report = audited(maker);
    REQUIRE(report.findings.size() >= 2);
    CHECK((report.findings.front().severity == audit::Severity::error));
    for (std::size_t i = 1; i < report.findings.size(); ++i)
        CHECK((report.findings[i - 1].severity <= report.findings[i].severity));
    CHECK(report.verdict.starts_with("Not fit to be signed: 1 error"));
    CHECK(report.found_something());
}

TEST_CASE("the table holds every finding and every formula, whatever stands in the cells") {
    BookMaker maker = area();
    maker.put("A5", "a \"quoted\", comma\nand line").put("C5", 3.0).put("D5", "m");
    maker.formula("C6", "=C2+C4", 520.0).put("A6", "=cmd|' /C calc'!A0");
    const Report report = signed_report(maker);
    const auto rows = parsed(audit::csv_text(report));
    std::size_t findings = 0;
    std::size_t formulas = 0;
    for (const auto& row : rows) {
        CHECK(row.size() == 23);
        findings += row[0] == "finding" ? 1 : 0;
        formulas += row[0] == "formula" ? 1 : 0;
        for (const std::string& field : row) CHECK((field.empty() || field[0] != '='));
    }
    CHECK(findings == report.findings.size());
    CHECK(formulas == report.counts.distinct);
    CHECK(audit::csv_text(report).find("a \"\"quoted\"\", comma\nand line") != std::string::npos);
}

TEST_CASE("the console shows verdict, counts and findings") {
    BookMaker maker = area();
    maker.formula("C6", "=C2+C4", 520.0);
    const std::string text = audit::console_text(audited(maker));
    CHECK(text.find("Not fit to be signed") == 0);
    CHECK(text.find("2 formulas, 2 distinct, 1 with UC functions") != std::string::npos);
    CHECK(text.find("error: units do not fit in Pit.C6") != std::string::npos);
}

TEST_CASE("a workbook without formulas, and one without anything") {
    CHECK(audited(BookMaker().sheet("Empty")).findings.empty());
    CHECK(audited(BookMaker()).findings.empty());
    CHECK(audited(BookMaker().put("A1", "a list").put("A2", 5.0)).verdict.find("no formula") !=
          std::string::npos);
}

}  // namespace undercroft::tests
