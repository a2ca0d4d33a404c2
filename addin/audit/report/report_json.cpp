#include <initializer_list>
#include <utility>

#include "addin/audit/report/report.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

std::string json_string(std::string_view text) {
    constexpr char digits[] = "0123456789abcdef";
    std::string made = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') {
            made += '\\';
            made += c;
        } else if (static_cast<unsigned char>(c) < 0x20) {
            made += "\\u00";
            made += digits[static_cast<unsigned char>(c) >> 4U];
            made += digits[static_cast<unsigned char>(c) & 15U];
        } else {
            made += c;
        }
    }
    return made + '"';
}

/// A value as JSON writes it (RFC 8259).
class Json {
public:
    Json(std::string_view text) : text_(json_string(text)) {}        // NOLINT: fields are written as pairs
    Json(const std::string& text) : Json(std::string_view(text)) {}  // NOLINT
    Json(const char* text) : Json(std::string_view(text)) {}         // NOLINT
    Json(std::size_t number) : text_(std::to_string(number)) {}      // NOLINT
    Json(bool yes) : text_(yes ? "true" : "false") {}                // NOLINT
    Json(const std::optional<double>& number) : text_(number ? exact_text(*number) : "null") {}  // NOLINT
    Json(const std::optional<std::string>& text)
        : text_(text ? json_string(*text) : std::string("null")) {}  // NOLINT

    static Json object(std::initializer_list<std::pair<const char*, Json>> members) {
        std::string text;
        for (const auto& [name, value] : members)
            text += (text.empty() ? "" : ",") + json_string(name) + ":" + value.text_;
        return written("{" + text + "}");
    }
    template <class Things, class Write>
    static Json list(const Things& things, const Write& write) {
        std::string text;
        for (const auto& thing : things) text += (text.empty() ? "\n" : ",\n") + Json(write(thing)).text_;
        return written("[" + text + "]");
    }
    [[nodiscard]] const std::string& text() const { return text_; }

private:
    static Json written(std::string text) {
        Json made("");
        made.text_ = std::move(text);
        return made;
    }
    std::string text_;
};

Json of_finding(const ReportFinding& finding) {
    const bool accepted = finding.accepted.has_value();
    return Json::object({{"severity", text_of(finding.severity)},
                         {"kind", word_of(finding.kind)},
                         {"title", finding.title},
                         {"cells", finding.cells},
                         {"label", finding.label},
                         {"says", finding.says},
                         {"accepted", accepted},
                         {"reason", accepted ? finding.accepted->reason : ""},
                         {"by", accepted ? finding.accepted->name : ""},
                         {"on", accepted ? finding.accepted->date : ""}});
}

Json of_input(const RegisterLine& input) {
    return Json::object({{"cells", input.cells},
                         {"reference", input.reference},
                         {"label", input.label},
                         {"symbol", input.symbol},
                         {"value", input.value},
                         {"unit", input.unit},
                         {"template", input.in_template},
                         {"usual", input.usual},
                         {"note", input.note},
                         {"state", text_of(input.state)},
                         {"changed since signed", input.when_signed.has_value()},
                         {"when signed", input.when_signed},
                         {"remark", input.remark}});
}

Json of_check(const CheckLine& check) {
    return Json::object({{"cells", check.cells},
                         {"reference", check.reference},
                         {"label", check.label},
                         {"verdict", text_of(check.verdict)},
                         {"shown", check.shown},
                         {"demand", check.demand},
                         {"capacity", check.capacity},
                         {"unit", check.unit},
                         {"ratio", check.ratio},
                         {"source", check.source},
                         {"rests on", text_of(check.rests)}});
}

Json of_change(const RevisionLine& line) {
    return Json::object({{"what", title_of(line.change)},
                         {"cells", line.cells},
                         {"label", line.label},
                         {"was", line.was},
                         {"is", line.is},
                         {"says", line.says}});
}

Json of_formula(const MapLine& line) {
    return Json::object({{"cells", line.cells},
                         {"label", line.label},
                         {"formula", line.formula},
                         {"value", line.value},
                         {"unit", line.unit},
                         {"units", text_of(line.verdict)},
                         {"reason", line.reason},
                         {"equation", line.equation},
                         {"source", line.source},
                         {"inputs", line.inputs},
                         {"link", line.is_link},
                         {"as signed", line.ticked}});
}

}  // namespace

std::string json_text(const Report& report) {
    const ReportCounts& counts = report.counts;
    const auto as_it_is = [](const std::string& text) { return Json(text); };
    std::vector<RevisionLine> changes;
    if (report.revision) changes = report.revision->lines;
    return Json::object({{"verdict", report.verdict},
                         {"job", report.job},
                         {"formulas", counts.formulas},
                         {"distinct formulas", counts.distinct},
                         {"errors", counts.errors},
                         {"warnings", counts.warnings},
                         {"notes", counts.notes},
                         {"accepted", counts.accepted},
                         {"not checked", Json::list(report.not_checked, as_it_is)},
                         {"findings", Json::list(report.findings, of_finding)},
                         {"inputs", Json::list(report.inputs, of_input)},
                         {"checks", Json::list(report.checks, of_check)},
                         {"since", report.earlier_name},
                         {"changes", Json::list(changes, of_change)},
                         {"template", Json::list(report.drift, as_it_is)},
                         {"fingerprint", report.fingerprint.whole},
                         {"signatures", Json::list(report.signatures,
                                                   [](const ReportSignature& signature) {
                                                       return Json::object({{"checker", signature.checker},
                                                                            {"date", signature.date},
                                                                            {"state", signature.state}});
                                                   })},
                         {"map", Json::list(report.map,
                                            [](const SheetMap& sheet) {
                                                return Json::object(
                                                    {{"sheet", sheet.name},
                                                     {"formulas", Json::list(sheet.lines, of_formula)}});
                                            })}})
               .text() +
           "\n";
}

}  // namespace undercroft::audit
