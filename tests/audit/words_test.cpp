// What the report says in words: verdicts, lines of the map, what was signed, the table and the console.
#include "addin/catalogue/catalogue.hpp"
#include "tests/audit/audited.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

namespace {

std::string plain_digest(std::string_view text) {
    return "<" + std::string(text) + ">";
}

BookMaker area_in_words() {
    BookMaker maker;
    maker.sheet("Pit").row(2, "Length", 40, "m").row(3, "Width", 12, "m");
    return maker.row(4, "Area of the base", "=UC.PRODUCT(C2:D2;C3:D3;D4)", 480, "m2");
}

}  // namespace

TEST_CASE("the verdict, from nothing to errors") {
    CHECK(audited(BookMaker()).verdict == "The workbook holds no formula; there is nothing to audit.");
    CHECK(audited(area_in_words()).verdict ==
          "Nothing was found in 1 formula; the map lists each distinct one to be read.");
    BookMaker two = area_in_words();
    two.row(5, "Half", "=C4/2", 240, "m2");
    CHECK(audited(two).verdict ==
          "Nothing was found in 2 formulas; the map lists each distinct one to be read.");
    BookMaker warned = area_in_words();
    warned.row(5, "Spare", 2, "m");
    CHECK(audited(warned).verdict == "Look at each before signing: 1 warning, 0 notes, no error.");
    BookMaker failing = warned;
    failing.formula("C7", "=C2>C4*C4", 0.0);
    CHECK(audited(failing).verdict == "Not fit to be signed: 2 errors, 1 warning, 0 notes.");
    BookMaker labelled = area_in_words();
    labelled.protect();
    for (const char* cell : {"C2", "C3", "D2", "D3"}) labelled.style(cell, "Entry", false);
    BookMaker renamed = labelled;
    renamed.put("A2", "Long side");
    const audit::Book book = renamed.made();
    const audit::Book from = labelled.made();
    CHECK(audit::audit_workbook({.book = book, .against = &from}).verdict ==
          "No error and no warning; 1 note to be read.");
    BookMaker warning_only;  // no formula, and something told all the same
    warning_only.put("A1", 1.0);
    warning_only.book().has_macros = true;
    CHECK(audited(warning_only).verdict.starts_with("Look at each before signing: 1 warning"));
}

TEST_CASE("the map: sheets in order, formulas in order, each with its cells, inputs and sources") {
    BookMaker maker = area_in_words();
    maker.formula("C6", "=SUM(C2:C3)+bed", 92.0)
        .put("A6", "Around")
        .formula("F2", "=C2", 40.0)
        .formula("F3", "=C3", 12.0);
    maker.name("bed", "$Pit.$C$2")
        .sheet("Empty")
        .put("A1", 1.0)
        .sheet("Last")
        .formula("A1", "=Pit.C4*2", 960.0);
    maker.array("C1:D3", "=UC.STAGE.STORAGE(2;Pit.C2:D2;Pit.C3:D3;\"0H:1V\";\"0.2 m\";\"0.2 m\";0.4)", 2.0);
    maker.show("C1", "m").show("D1", "m3");
    const Report report = audited(maker);
    REQUIRE(report.map.size() == 2);
    CHECK(report.map[0].name == "Pit");
    CHECK(report.map[1].name == "Last");
    CHECK(report.map[1].sheet == 2);
    std::vector<std::string> lines;
    for (const audit::MapLine& line : report.map[0].lines)
        lines.push_back(line.cells + " x" + std::to_string(line.count) + " | " + line.label + " | " +
                        line.formula + " | " + line.value + " | " + line.unit + " | " + line.inputs);
    CHECK(
        lines ==
        std::vector<std::string>{
            "Pit.F2:F3 x2 | Length | =C2 | 40 |  | C2 = 40 m",
            "Pit.C4 x1 | Area of the base | =UC.PRODUCT(C2:D2;C3:D3;D4) | 480 | m2 | C2:D2 = 40 m; C3:D3 = "
            "12 m; D4 = m2",
            "Pit.C6 x1 | Around | =SUM(C2:C3)+bed | 92 |  | C2:C3 = range of 2 x 1 cells; bed = 40 m (C2)"});
    const audit::MapLine* table = line_at(report, "C1", 2);
    REQUIRE(table != nullptr);
    CHECK(table->cells == "Last.C1:D3");
    CHECK(table->unit == "m; m3");
    CHECK_FALSE(table->equation.empty());
    CHECK_FALSE(table->source.empty());
    CHECK(line_at(report, "A1", 2)->inputs == "Pit.C4 = 480 m2");
    CHECK(line_at(report, "A1", 2)->equation.empty());
}

TEST_CASE("inputs: blanks, errors, long texts, and no more than fourteen") {
    BookMaker maker;
    maker.sheet("S")
        .put("A1", 1.0)
        .put("A2", std::string(70, 'x'))
        .formula("A3", "=1/0", Error{532})
        .put("B1", "m");
    maker.formula("J1", "=A1+A2+A3+A4+ROWS(A1:A9)", 1.0);
    const std::string inputs = line_at(audited(maker), "J1")->inputs;
    CHECK(inputs == "A1 = 1 m; A2 = " + std::string(60, 'x') + "...; A3 = #DIV/0!; A4 = blank");
    maker.formula("J1", "=UC.PRODUCT(A1:B1;A5:B5;\"m\")", 1.0);
    CHECK(line_at(audited(maker), "J1")->inputs == "A1:B1 = 1 m; A5:B5 = blank without unit");
    std::string long_sum = "=A1";
    for (int row = 2; row <= 16; ++row) long_sum += "+A" + std::to_string(row);
    maker.formula("J1", long_sum, 1.0);
    CHECK(line_at(audited(maker), "J1")->inputs.ends_with("A14 = blank and 2 more"));
    maker.formula("J1", "=A1+A1", 2.0);
    CHECK(line_at(audited(maker), "J1")->inputs == "A1 = 1 m");
}

TEST_CASE("equations and sources of several functions, each once") {
    const addin::Function& volume = *addin::find_function("UC.PIT.VOLUME");
    const addin::Function& load = *addin::find_function("UC.LOAD.FILL");
    REQUIRE(volume.equation != "-");
    REQUIRE(load.equation != "-");
    REQUIRE(volume.source != load.source);
    BookMaker maker = area_in_words();
    const std::string pit = "UC.PIT.VOLUME(C2:D2;C3:D3;\"1 m\";\"1H:1V\";\"m3\")";
    maker.formula("C6", "=" + pit + "+UC.LOAD.FILL(F1:G2)+" + pit, 480.0);
    const Report report = audited(maker);
    const audit::MapLine* line = line_at(report, "C6");
    REQUIRE(line != nullptr);
    CHECK(line->equation == volume.equation + "; " + load.equation);
    CHECK(line->source == volume.source + "; " + load.source);
}

TEST_CASE("what is signed: every formula, number, text and name, on lines of their own") {
    BookMaker maker;
    maker.sheet("S\t1")
        .put("A1", 0.1)
        .put("B1", "m")
        .formula("C1", "=A1*2", 0.2)
        .put("A2", "two\nlines \\ \r");
    maker.array("E1:F2", "=A1:B2", 1.0).name("bed", "$S.$A$1").name("area", "$S.$A$2", 0);
    maker.sheet("Audit").put("A1", audit::audit_sheet_title).name("found", "$Audit.$A$1", 1);
    const audit::Book book = maker.made();
    CHECK(audit::canonical_text(book) ==
          "name\tarea on "
          "S\t1\t$S.$A$2\nname\tbed\t$S.$A$1\nsheet\tS\\t1\nA1\t0.1\nB1\t\"m\nC1\t=A1*2\nE1:F2\t=A1:B2\nA2\t"
          "\"two\\nlines \\\\ \\r\n");
    const audit::Fingerprint made = audit::fingerprint(book, plain_digest);
    CHECK(made.first_release == "<" + audit::canonical_text(book) + ">");
    REQUIRE(made.sheets.size() == 1);
    CHECK(made.sheets[0].first == "S\t1");
    CHECK(made.sheets[0].second == "<" + audit::canonical_text(book.sheets[0]) + ">");
    CHECK(audit::fingerprint(book, {}).whole.empty());
}

TEST_CASE("what became of a signature") {
    using audit::Fingerprint;
    const Fingerprint then{"w1", {{"A", "a1"}, {"B", "b1"}}};
    const auto state = [&](const Fingerprint& now, const std::string& checker = "A. Checker") {
        return audit::state_of({checker, "2026-11-27", then}, now);
    };
    Fingerprint same = then;  // of our first release, so that its whole is judged
    same.first_release = then.whole;
    CHECK(state(same) == "the workbook is what was signed");
    CHECK(state(then, "") == "not signed");
    CHECK(state({"w2", {{"A", "a1"}, {"B", "b2"}}}) == "changed since: B");
    CHECK(state({"w2", {{"A", "a2"}, {"B", "b2"}}}) == "changed since: A, B");
    CHECK(state({"w2", {{"A", "a1"}, {"C", "c1"}}}) == "changed since: C (new), B (gone)");
    CHECK(state({"w2", then.sheets}) == "changed since: defined names, or the order of the sheets");
    CHECK(audit::state_of({"A", "", {"w1", {{"A", "a1"}}}}, {"w2", {{"A", "a1-and-more"}}}) ==
          "changed since: defined names, or the order of the sheets");  // kept in part
    CHECK(audit::state_of({"A", "", {"w1", {{"A", ""}}}}, {"w2", {{"A", "a1"}}}) == "changed since: A");
    const audit::Book book = area_in_words().made();
    const auto told = [&](std::vector<audit::Signature> signatures) {
        const Report report = audit::audit_workbook(
            {.book = book, .digest = plain_digest, .signatures = std::move(signatures)});
        for (const audit::ReportFinding& finding : report.findings)
            if (finding.kind == FindingKind::signature) return finding.says;
        return std::string();
    };
    CHECK(
        told({{"A. Checker", "2026-11-27", {"other", {}}}}) ==
        "signed by A. Checker on 2026-11-27; changed since: Pit (new); check what changed, and sign again.");
    CHECK(told({{"A. Checker", "", {"other", {}}}}).starts_with("signed by A. Checker; changed since"));
    CHECK(told({{"", "2026-11-27", {"other", {}}}}).empty());
    const audit::Fingerprint now = audit::fingerprint(book, plain_digest);
    CHECK(told({{"A. Checker", "", {"other", {}}}, {"B. Checker", "", now}}).empty());
    CHECK_FALSE(told({{"B. Checker", "", now}, {"A. Checker", "", {"other", {}}}}).empty());
    CHECK_FALSE(told({{"A. Checker", "", {"other", {}}}, {"", "", now}}).empty());
}

TEST_CASE("the table for other programs") {
    BookMaker maker = area_in_words();
    maker.row(5, "Spare \"x\"", 2, "m").put("A6", "-5").formula("C6", "=C2*1", 40.0);
    const std::string csv = audit::csv_text(audited(maker));
    CHECK(
        csv.starts_with("\"part\",\"answer\",\"title\",\"cells\",\"label\",\"says\",\"formula\",\"value\","
                        "\"unit\",\"equation\","
                        "\"source\",\"inputs\",\"reference\",\"symbol\",\"template\",\"usual\",\"note\","
                        "\"demand\",\"capacity\",\"ratio\",\"rests on\",\"was\",\"accepted\"\r\n"
                        "\"summary\",\"\",\"verdict\","));
    for (const char* line :
         {"\"summary\",\"\",\"formulas\",\"\",\"\",\"2\",",
          "\"summary\",\"\",\"distinct formulas\",\"\",\"\",\"2\",",
          "\"summary\",\"\",\"formulas with UC functions\",\"\",\"\",\"1\",",
          "\"summary\",\"\",\"errors\",\"\",\"\",\"0\",", "\"summary\",\"\",\"warnings\",\"\",\"\",\"1\",",
          "\"summary\",\"\",\"notes\",\"\",\"\",\"0\",",
          "\"summary\",\"\",\"units consistent\",\"\",\"\",\"1\",",
          "\"finding\",\"warning\",\"input that nothing uses\",\"Pit.C5\",\"Spare \"\"x\"\"\",",
          "\"formula\",\"consistent\",\"Pit\",\"Pit.C4\",\"Area of the base\",\"in m2, as stands beside "
          "it\",\"'=UC.PRODUCT",
          "\"-5\""}) {
        CAPTURE(line);
        CHECK(csv.find(line) != std::string::npos);
    }
    const audit::Book book = area_in_words().made();
    const std::string signed_csv =
        audit::csv_text(audit::audit_workbook({.book = book,
                                               .against = &book,
                                               .digest = plain_digest,
                                               .signatures = {{"A. Checker", "2026-11-27", {"other", {}}}}}));
    for (const char* line :
         {"\"signature\",\"\",\"A. Checker, 2026-11-27\",\"\",\"\",\"changed since: Pit (new)\"",
          "\"template\",\"\",\"\",\"\",\"\",\"1 formulas as in the template\"",
          "\"fingerprint\",\"\",\"whole workbook\",\"\",\"\",\"<",
          "\"fingerprint\",\"\",\"Pit\",\"\",\"\",\"<"}) {
        CAPTURE(line);
        CHECK(signed_csv.find(line) != std::string::npos);
    }
    BookMaker spaced = area_in_words();
    spaced.row(5, "\t=cmd\r+cmd", 2, "m");
    CHECK(audit::csv_text(audited(spaced)).find("\"' =cmd / +cmd\"") != std::string::npos);
    for (const char* start : {"=", "+", "-", "@"}) {
        CAPTURE(start);
        BookMaker harmful = area_in_words();
        harmful.row(5, start + std::string("cmd"), 2, "m");
        CHECK(audit::csv_text(audited(harmful)).find(std::string("\"'") + start + "cmd\"") !=
              std::string::npos);
    }
}

TEST_CASE("the console, with a template and a signature") {
    const audit::Book book = area_in_words().made();
    audit::Subject subject{.book = book, .against = &book, .digest = plain_digest};
    subject.signatures = {{"A. Checker", "2026-11-27", audit::fingerprint(book, plain_digest)},
                          {"B. Checker", "", {}}};
    const std::string text = audit::console_text(audit::audit_workbook(subject));
    CHECK(text.starts_with(
        "Not fit to be signed: 1 error, 0 warnings, 0 notes.\n1 formulas, 1 distinct, 1 with UC functions\n"
        "units: 1 consistent, 0 inconsistent, 0 cannot tell, 0 no unit given\n"));
    CHECK(text.find("\nerror: changed since it was signed\n  Signed by B. Checker; changed since") !=
          std::string::npos);
    CHECK(text.find("\ntemplate\n  made from: a workbook that does not say its template\n") !=
          std::string::npos);
    CHECK(text.find("\nsigned by A. Checker on 2026-11-27: the workbook is what was signed\n") !=
          std::string::npos);
    CHECK(text.find("\nsigned by B. Checker: changed since") != std::string::npos);
    CHECK(text.find("\nfingerprint <") != std::string::npos);
    BookMaker spare = area_in_words();
    spare.row(5, "Spare", 2, "m");
    CHECK(
        audit::console_text(audited(spare))
            .find(
                "\nwarning: input that nothing uses in Pit.C5 (Spare)\n  Nothing uses this input (Spare);") !=
        std::string::npos);
}

TEST_CASE("every kind of finding has a title and a word of its own") {
    std::vector<std::string> words;
    std::vector<std::string> titles;
    for (int kind = 0; kind <= static_cast<int>(FindingKind::signature); ++kind) {
        words.emplace_back(audit::word_of(static_cast<FindingKind>(kind)));
        titles.emplace_back(audit::title_of(static_cast<FindingKind>(kind)));
        CHECK(titles.back().size() > 4);
    }
    CHECK(joined(words, " ") ==
          "error circular check_failed typed_over template_changed template_rows neighbour bare_number "
          "unit_clash passed_bare "
          "unit_left_out unit_text number_format cut_table blank_reference text_reference sum_misses unused "
          "link stale unsteady "
          "version hidden file "
          "macros weak_check counted_twice lookup ranges swallowed text_address sliding swapped wrong_row "
          "missing_unit comment "
          "unlocked names shown_otherwise outlier twin not_compared not_followed signature");
    std::sort(titles.begin(), titles.end());
    CHECK(std::adjacent_find(titles.begin(), titles.end()) == titles.end());
    CHECK(audit::text_of(audit::Severity::error) == "error");
    CHECK(audit::text_of(audit::Severity::warning) == "warning");
    CHECK(audit::text_of(audit::Severity::note) == "note");
}

}  // namespace undercroft::tests
