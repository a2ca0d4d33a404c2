// What a file brings along: links, scripts and controls, by the elements and parts that hold them.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

using audit::FileRisks;
using audit::XmlAttributes;

FileRisks with_element(const char* element, const XmlAttributes& attributes, const char* part = "content.xml",
                       const std::vector<std::string>& parts = {}) {
    FileRisks risks;
    risks.take_parts(parts);
    risks.take_element(part, element, attributes);
    return risks;
}

Report report_of(const FileRisks& risks) {
    BookMaker maker;
    maker.sheet("Pit").row(2, "Length", 40, "m").row(3, "Width", 12, "m").row(4, "Area", "=C2*C3", 480, "m2");
    const audit::Book book = maker.made();
    return audit::audit_workbook({.book = book, .risks = &risks});
}

}  // namespace

TEST_CASE("whatever shows what lies outside of the file is a link") {
    const std::vector<std::pair<const char*, const char*>> links = {
        {"draw:image", "http://127.0.0.1/a.png"},
        {"draw:image", "/etc/secret.png"},
        {"draw:image", "../secret.png"},
        {"draw:object", "file:///tmp/a.ods"},
        {"draw:object-ole", "\\\\server\\a"},
        {"draw:floating-frame", "http://127.0.0.1/"},
        {"draw:plugin", "http://127.0.0.1/a.mp4"},
        {"draw:fill-image", "http://127.0.0.1/a.png"},
        {"style:background-image", "a.png"},
        {"svg:font-face-uri", "http://127.0.0.1/a.ttf"},
        {"meta:template", "http://127.0.0.1/a.ots"},
        {"meta:auto-reload", "http://127.0.0.1/"},
        {"chart:chart", "http://127.0.0.1/a.odc"},
        {"form:form", "http://127.0.0.1/send"},
        {"some:thing", "ftp://127.0.0.1/"}};
    for (const auto& [element, link] : links) {
        CAPTURE(element, link);
        const FileRisks risks = with_element(element, {{"xlink:href", link}});
        REQUIRE(risks.links().size() == 1);
        CHECK(risks.links().begin()->ends_with(link));
        CHECK(count_of(report_of(risks), FindingKind::link) == 1);
    }
}

TEST_CASE("what lies in the file, and what waits for a click, is no link") {
    const std::vector<std::string> parts = {"Pictures/a.png", "Object 1/content.xml"};
    for (const char* inside : {"Pictures/a.png", "./Object 1", "#Site.A1", "data:image/png;base64,AA", ""}) {
        CAPTURE(inside);
        CHECK(with_element("draw:image", {{"xlink:href", inside}}, "content.xml", parts).links().empty());
    }
    CHECK(
        with_element("draw:image", {{"xlink:href", "Pictures/b.png"}}, "content.xml", parts).links().size() ==
        1);
    CHECK(with_element("chart:chart", {{"xlink:href", ".."}}).links().empty());
    for (const char* inside : {"..", ".", "../Pictures/a.png", "Pictures/b.png"})
        CHECK(with_element("draw:image", {{"xlink:href", inside}}, "Object 1/content.xml",
                           {"Pictures/a.png", "Object 1/content.xml", "Object 1/Pictures/b.png"})
                  .links()
                  .empty());
    CHECK(with_element("draw:image", {{"xlink:href", "../../a.png"}}, "Object 1/content.xml", parts)
              .links()
              .size() == 1);
    CHECK(with_element("text:a", {{"xlink:href", "http://127.0.0.1/"}}).links().empty());
    CHECK(with_element("table:table", {{"table:name", "http://127.0.0.1/"}}).links().empty());
    CHECK(report_of({}).findings.empty());
}

TEST_CASE("data bases are links") {
    CHECK(*with_element("table:database-source-sql", {{"table:database-name", "Costs"}}).links().begin() ==
          "data base Costs");
    CHECK(*with_element("table:source-service", {{"table:name", "Cube"}}).links().begin() ==
          "data base Cube");
}

TEST_CASE("macros, scripts, and what starts them") {
    const FileRisks event = with_element("script:event-listener", {{"script:event-name", "dom:load"}});
    CHECK(event.scripts().contains("at dom:load"));
    CHECK(with_element("ooo:module", {{"ooo:name", "Module1"}}).scripts().contains("Basic Module1"));
    CHECK(with_element("table:error-macro", {}).scripts().size() == 1);
    for (const char* script : {"vnd.sun.star.script:a.py$f?language=Python", "Macro:///Standard.A.B",
                               "JAVASCRIPT:f()", "service:org.example.Job"}) {
        CAPTURE(script);
        const FileRisks risks = with_element("text:a", {{"xlink:href", script}});
        CHECK(risks.scripts().contains(script));
        CHECK(count_of(report_of(risks), FindingKind::macros) == 1);
    }
    CHECK(with_element("xlink:any", {{"title", "vnd.sun.star.script:a"}}).scripts().size() == 1);
    for (const char* part : {"Basic/Standard/Module1.xml", "Scripts/python/a.py", "Dialogs/Standard/a.xml",
                             "xl/vbaProject.bin", "xl/macrosheets/sheet1.xml", "customUI/customUI.xml"}) {
        CAPTURE(part);
        FileRisks risks;
        risks.take_parts({"content.xml", part});
        CHECK(risks.scripts().contains(part));
    }
    FileRisks none;
    none.take_parts({"content.xml", "Basic/", "Configurations2/toolbar/", "Thumbnails/thumbnail.png"});
    CHECK(none.scripts().empty());
}

TEST_CASE("controls are told with the cell that they are bound to") {
    const FileRisks button =
        with_element("form:checkbox", {{"form:name", "Passed"}, {"form:linked-cell", "Job.B2"}});
    CHECK(button.controls().contains("checkbox Passed, bound to Job.B2"));
    const Report report = report_of(button);
    REQUIRE(report.findings.size() == 1);
    CHECK(report.findings[0].says.find("checkbox Passed, bound to Job.B2") != std::string::npos);
    CHECK(with_element("form:form", {}).controls().empty());
    CHECK(with_element("form:property", {{"form:name", "x"}}).controls().empty());
    CHECK(with_element("xforms:model", {}).controls().size() == 1);
    FileRisks active;
    active.take_parts(
        {"xl/activeX/activeX1.xml", "xl/ctrlProps/ctrlProp1.xml", "xl/embeddings/oleObject1.bin"});
    CHECK(active.controls().size() == 3);
}

TEST_CASE("relationships of an Office Open XML package") {
    const auto of = [](const char* type, const char* target, const char* mode) {
        return with_element("Relationship", {{"Type", type}, {"Target", target}, {"TargetMode", mode}},
                            "xl/a.rels");
    };
    const FileRisks image = of("http://x/image", "http://127.0.0.1/a.png", "External");
    CHECK(image.links().contains("image http://127.0.0.1/a.png"));
    CHECK(of("http://x/hyperlink", "http://127.0.0.1/", "External").links().empty());
    CHECK(of("http://x/externalLinkPath", "a.xlsx", "External").links().empty());  // listed by the office
    CHECK(of("http://x/image", "../media/a.png", "").links().empty());
}

TEST_CASE("many links are told in one finding, the first of them by name") {
    FileRisks risks;
    for (int i = 0; i < 5000; ++i)
        risks.take_element("content.xml", "draw:image",
                           {{"xlink:href", "http://127.0.0.1/" + std::to_string(i)}});
    CHECK(risks.links().size() == 1000);
    const Report report = report_of(risks);
    REQUIRE(report.findings.size() == 1);
    CHECK(report.findings[0].says.find("and 992 more") != std::string::npos);
}

TEST_CASE("INDIRECT to another file is a link, in the formula or in the cell that it reads") {
    const auto indirect = [](const char* formula, const char* text) {
        BookMaker maker;
        maker.sheet("Pit").put("A1", text).formula("B1", formula, 1.0);
        return count_of(audited(maker), FindingKind::link);
    };
    CHECK(indirect("=INDIRECT(\"'file:///tmp/a.ods'#$S.A1\")", "x") == 1);
    CHECK(indirect("=INDIRECT(A1)", "'file:///tmp/a.ods'#$S.A1") == 1);
    CHECK(indirect("=INDIRECT(A1)", "http://127.0.0.1/a.ods") == 1);
    CHECK(indirect("=INDIRECT(A1)", "[a.xlsx]Sheet1!A1") == 1);
    CHECK(indirect("=INDIRECT(A1)", "C5") == 0);
}

TEST_CASE("what was not checked is said, and is no finding") {
    BookMaker maker;
    maker.sheet("Pit").row(2, "Length", 40, "m").row(3, "Width", 12, "m").row(4, "Area", "=C2*C3", 480, "m2");
    const audit::Book book = maker.made();
    const Report report = audit::audit_workbook({.book = book, .not_checked = {"the results: no reason"}});
    CHECK(report.findings.empty());
    CHECK(audit::console_text(report).find("\nnot checked: the results: no reason\n") != std::string::npos);
    CHECK(audit::csv_text(report).find("\"not checked\",\"\",\"\",\"\",\"\",\"the results: no reason\"") !=
          std::string::npos);
}

TEST_CASE("texts of a workbook command neither the console nor a reader of the table") {
    BookMaker maker;
    maker.sheet("Pit").row(2, "Length", 40, "m").row(3, "Width", 12, "m").row(4, "Area", "=C2*C3", 480, "m2");
    maker.row(6, "Spare\nNothing was found in 900 formulas\x1b[2J", 40, "m");
    maker.row(7, "a;=HYPERLINK(\"http://127.0.0.1/\")\t@SUM(1)\n+1+cmd;-2", 3, "m");
    const Report report = audited(maker);
    REQUIRE(report.findings.size() == 2);
    const std::string console = audit::console_text(report);
    CHECK(console.find('\x1b') == std::string::npos);
    CHECK(console.find("\nNothing was found in 900") == std::string::npos);
    CHECK(console.find("Spare / Nothing was found in 900 formulas<U+001B>[2J") != std::string::npos);
    const std::string table = audit::csv_text(report);
    CHECK(table.find('\x1b') == std::string::npos);
    CHECK(table.find(";=HYPER") == std::string::npos);
    CHECK(table.find("a;'=HYPERLINK") != std::string::npos);
    CHECK(table.find('\t') == std::string::npos);
    CHECK(table.find("\n'+1+cmd;-2") != std::string::npos);  // a bare number is no formula
}

}  // namespace undercroft::tests
