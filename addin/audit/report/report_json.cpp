#include <boost/json/src.hpp>

#include "addin/audit/report/report.hpp"

namespace undercroft::audit {

namespace {

template <class T>
boost::json::value or_null(const std::optional<T>& value) {
    return value ? boost::json::value(*value) : boost::json::value(nullptr);
}

template <class Things, class Write>
boost::json::array list_of(const Things& things, const Write& write) {
    boost::json::array list;
    for (const auto& thing : things) list.emplace_back(write(thing));
    return list;
}

boost::json::object of_finding(const ReportFinding& finding) {
    const bool accepted = finding.accepted.has_value();
    return boost::json::object({{"severity", text_of(finding.severity)},
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

boost::json::object of_input(const RegisterLine& input) {
    return boost::json::object({{"cells", input.cells},
                                {"reference", input.reference},
                                {"label", input.label},
                                {"symbol", input.symbol},
                                {"value", input.value},
                                {"unit", input.unit},
                                {"template", or_null(input.in_template)},
                                {"usual", input.usual},
                                {"note", input.note},
                                {"state", text_of(input.state)},
                                {"changed since signed", input.when_signed.has_value()},
                                {"when signed", or_null(input.when_signed)},
                                {"remark", input.remark}});
}

boost::json::object of_check(const CheckLine& check) {
    const auto side = [&](const std::optional<double>& number, const std::string& text) {
        return check.of_days ? boost::json::value(text) : or_null(number);
    };
    return boost::json::object({{"cells", check.cells},
                                {"reference", check.reference},
                                {"label", check.label},
                                {"verdict", text_of(check.verdict)},
                                {"shown", check.shown},
                                {"demand", side(check.demand, check.demand_text)},
                                {"capacity", side(check.capacity, check.capacity_text)},
                                {"unit", check.unit},
                                {"ratio", or_null(check.ratio)},
                                {"source", check.source},
                                {"rests on", text_of(check.rests)}});
}

boost::json::object of_change(const RevisionLine& line) {
    return boost::json::object({{"what", title_of(line.change)},
                                {"cells", line.cells},
                                {"label", line.label},
                                {"was", line.was},
                                {"is", line.is},
                                {"says", line.says}});
}

boost::json::object of_formula_line(const MapLine& line) {
    return boost::json::object({{"cells", line.cells},
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
    const auto as_it_is = [](const std::string& text) { return boost::json::value(text); };
    std::vector<RevisionLine> changes;
    if (report.revision) changes = report.revision->lines;
    return boost::json::serialize(boost::json::object(
               {{"verdict", report.verdict},
                {"job", report.job},
                {"formulas", counts.formulas},
                {"distinct formulas", counts.distinct},
                {"errors", counts.errors},
                {"warnings", counts.warnings},
                {"notes", counts.notes},
                {"accepted", counts.accepted},
                {"not checked", list_of(report.not_checked, as_it_is)},
                {"findings", list_of(report.findings, of_finding)},
                {"inputs", list_of(report.inputs, of_input)},
                {"checks", list_of(report.checks, of_check)},
                {"since", report.earlier_name},
                {"changes", list_of(changes, of_change)},
                {"template", list_of(report.drift, as_it_is)},
                {"fingerprint", report.fingerprint.whole},
                {"signatures", list_of(report.signatures,
                                       [](const ReportSignature& signature) {
                                           return boost::json::object({{"checker", signature.checker},
                                                                       {"date", signature.date},
                                                                       {"state", signature.state}});
                                       })},
                {"map", list_of(report.map,
                                [](const SheetMap& sheet) {
                                    return boost::json::object(
                                        {{"sheet", sheet.name},
                                         {"formulas", list_of(sheet.lines, of_formula_line)}});
                                })}})) +
           "\n";
}

}  // namespace undercroft::audit
