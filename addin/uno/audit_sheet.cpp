#include "addin/uno/audit_sheet.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/document/XActionLockable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/table/XTableColumns.hpp>

#include <algorithm>
#include <numeric>

#include "addin/catalogue/catalogue.hpp"
#include "addin/uno/audit_page.hpp"
#include "addin/uno/audit_paper.hpp"
#include "addin/uno/audit_record.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr sal_Int32 widths[audit_columns] = {2100, 5400, 2600, 2200, 4500, 1700, 300,  2100, 5400,
                                             2600, 2200, 4500, 1700, 6000, 9000, 9000, 100,  100};  // 0.01 mm
constexpr std::size_t digits_by_sheet = 16;
constexpr std::size_t letters_of_a_line = 100;
constexpr float digest_size = 6;

/// "Site 0123456789abcdef; Storage ..."
std::string text_by_sheet(const audit::Fingerprint& fingerprint) {
    std::string text;
    for (const auto& [name, digest] : fingerprint.sheets)
        text += (text.empty() ? "" : "; ") + name + " " + digest.substr(0, digits_by_sheet);
    return text;
}

/// A text in lines of so many letters, cut between words.
std::vector<std::string> lines_of(std::string_view text) {
    std::vector<std::string> lines;
    while (text.size() > letters_of_a_line) {
        const std::size_t gap = text.rfind(' ', letters_of_a_line);
        if (gap == std::string_view::npos || gap == 0) break;
        lines.emplace_back(text.substr(0, gap));
        text.remove_prefix(gap + 1);
    }
    lines.emplace_back(text);
    return lines;
}

std::string joined_by(const std::string& a, const char* gap, const std::string& b) {
    return a + (a.empty() || b.empty() ? "" : gap) + b;
}

class SheetComposer {
public:
    SheetComposer(const audit::Report& report, const AuditRecord& record, const AuditPaper& paper)
        : report_(report), record_(record), paper_(paper), page_(paper) {}

    /// The last row that is printed.
    [[nodiscard]] sal_Int32 printed() const { return printed_; }

    AuditPage page() {
        page_.title(audit::audit_sheet_title);
        verdict();
        summary();
        sign_off();
        worth_a_look();
        inputs();
        checks();
        findings();
        revision();
        map(true);
        printed_ = page_.last();
        page_.end_of_paper();
        map(false);
        page_.keep_signed(records_of(record_.at_signing));
        return std::move(page_);
    }

private:
    void small_print(const std::string& text) {
        page_.line({{0, text}});
        page_.dress({0, 0, 0, -1, false, look::ink});
    }

    void verdict() {
        const audit::ReportCounts& counts = report_.counts;
        page_.verdict(report_.verdict, counts.errors > 0                    ? look::bad
                                       : counts.warnings + counts.notes > 0 ? look::fair
                                                                            : look::good);
        small_print(
            "The audit reads formulas, units and values. It does not judge the design: a licensed engineer "
            "does, under local codes.");
    }

    void summary() {
        const audit::ReportCounts& counts = report_.counts;
        page_.section("Summary");
        const auto number = [](std::size_t count) { return std::to_string(count); };
        if (!report_.job.empty()) page_.line({{what_column, "Job"}, {value_column, report_.job}});
        const auto units = [&](audit::UnitVerdict answer) {
            return std::pair("Units: " + audit::text_of(answer), number(counts.units_that_are(answer)));
        };
        const std::pair<std::string, std::string> left[] = {{"Formulas", number(counts.formulas)},
                                                            {"of which distinct", number(counts.distinct)},
                                                            {"with our functions", number(counts.with_own)},
                                                            {"Functions", version()},
                                                            {"Errors", number(counts.errors)}};
        const std::pair<std::string, std::string> right[] = {units(audit::UnitVerdict::consistent),
                                                             units(audit::UnitVerdict::inconsistent),
                                                             units(audit::UnitVerdict::cannot_tell),
                                                             units(audit::UnitVerdict::not_given),
                                                             {"Warnings", number(counts.warnings)}};
        constexpr sal_Int32 other_what = second_half + what_column;
        constexpr sal_Int32 other_value = second_half + value_column;
        for (std::size_t i = 0; i < std::size(left); ++i)
            page_.line({{what_column, left[i].first},
                        {value_column, left[i].second},
                        {other_what, right[i].first},
                        {other_value, right[i].second}});
        page_.line({{what_column, "Accepted findings"},
                    {value_column, number(counts.accepted)},
                    {other_what, "Notes"},
                    {other_value, number(counts.notes)}});
        for (const std::string& what : report_.not_checked) small_print("Not checked: " + what);
        for (const std::string& line : report_.drift) small_print("Template: " + line);
    }

    void sign_off() {
        page_.section("Sign-off");
        page_.heads({{checker, std::string(head_of::checker)},
                     {date, std::string(head_of::date)},
                     {state, std::string(head_of::state)},
                     {whole, std::string(head_of::whole)},
                     {by_sheet, std::string(head_of::by_sheet)}});
        for (std::size_t i = 0; i < record_.signatures.size(); ++i) {
            const audit::Signature& signature = record_.signatures[i];
            const std::string now = i < report_.signatures.size() ? report_.signatures[i].state : "";
            signature_row(signature.checker, signature.date, now, signature.of);
        }
        signature_row("", "", "type a name and a date to sign", report_.fingerprint);
        page_.dress({0, checker, date, look::entry, false, look::ink, 0, true});
        small_print(
            "A signature stands for the fingerprint in its row: formulas, inputs, units, results as shown, "
            "formats, visibility, names, macros and settings. The next audit says whether the workbook still "
            "is that, and else what kind of thing is another.");
    }

    void signature_row(const std::string& name, const std::string& day, const std::string& now,
                       const audit::Fingerprint& of) {
        page_.row(
            {{checker, name}, {date, day}, {state, now}, {whole, of.whole}, {by_sheet, text_by_sheet(of)}});
        page_.record(audit::text_of_parts(of));
        page_.dress({0, whole, whole, -1, false, look::ink, digest_size});
    }

    static std::string remark_of(const audit::RegisterLine& input) {
        if (!input.when_signed) return input.remark;
        return joined_by(
            input.remark, "; ",
            input.when_signed->empty() ? "new since it was signed" : "when signed " + *input.when_signed);
    }

    static std::string name_of(const audit::RegisterLine& input) {
        return joined_by(input.reference, " ", joined_by(input.label, ", ", input.symbol));
    }

    void worth_a_look() {
        const auto is_worth = [](const audit::RegisterLine& input) {
            return input.gravity > 0 || input.when_signed.has_value();
        };
        if (std::none_of(report_.inputs.begin(), report_.inputs.end(), is_worth)) return;
        page_.section("Inputs worth a look");
        page_.heads({{cell_column, "Cell"},
                     {what_column, "What it is"},
                     {value_column, "Value"},
                     {template_column, "Template"},
                     {usual_column, "Usual; note"},
                     {second_half, "Why"}});
        for (const audit::RegisterLine& input : report_.inputs) {
            if (!is_worth(input)) continue;
            page_.row({{what_column, name_of(input)},
                       {value_column, input.value_and_unit()},
                       {template_column, input.in_template.value_or("")},
                       {usual_column, joined_by(input.usual, "; ", input.note)},
                       {second_half, remark_of(input)}});
            page_.link(cell_column, input.target, input.cells);
            if (input.gravity > 0) page_.dress({0, second_half, shown_columns - 1, look::fair});
        }
    }

    /// Two beside each other, down the left half of what a page has left and then down its right half.
    void inputs() {
        const std::vector<audit::RegisterLine>& all = report_.inputs;
        std::size_t count = 0;
        for (std::size_t begin = 0; begin < all.size(); begin += count) {
            count = std::min(2 * page_.rows_of_section(), all.size() - begin);
            const std::size_t left = (count + 1) / 2;
            page_.section(begin == 0 ? "Register of inputs" : "Register of inputs, continued");
            std::vector<Placed> heads;
            for (const sal_Int32 half : {sal_Int32(cell_column), sal_Int32(second_half)})
                for (const auto& [column, head] :
                     std::initializer_list<std::pair<sal_Int32, const char*>>{{cell_column, "Cell"},
                                                                              {what_column, "What it is"},
                                                                              {value_column, "Value"},
                                                                              {template_column, "Template"},
                                                                              {usual_column, "Usual; note"},
                                                                              {state_column, "State"}})
                    heads.emplace_back(half + column, head);
            page_.heads(heads);
            for (std::size_t i = 0; i < left; ++i) {
                std::vector<Placed> texts;
                add_input(all[begin + i], cell_column, texts);
                const bool both = left + i < count;
                if (both) add_input(all[begin + left + i], second_half, texts);
                page_.row(texts);
                finish_input(all[begin + i], cell_column);
                if (both) finish_input(all[begin + left + i], second_half);
            }
        }
    }

    static void add_input(const audit::RegisterLine& input, sal_Int32 half, std::vector<Placed>& texts) {
        texts.emplace_back(half + what_column, name_of(input));
        texts.emplace_back(half + value_column, input.value_and_unit());
        texts.emplace_back(half + template_column, input.in_template.value_or(""));
        texts.emplace_back(half + usual_column, joined_by(input.usual, "; ", input.note));
        texts.emplace_back(half + state_column, std::string(text_of(input.state)));
    }

    void finish_input(const audit::RegisterLine& input, sal_Int32 half) {
        page_.record(std::string(input_record) + input.key + "\t" + input.kept());
        page_.link(half, input.target, input.cells);
        if (input.gravity > 0) page_.dress({0, half + value_column, half + value_column, look::fair});
        if (input.state == audit::InputState::assumed)
            page_.dress({0, half + state_column, half + state_column, look::fair});
    }

    void checks() {
        if (report_.checks.empty()) return;
        constexpr sal_Int32 verdict = template_column;
        constexpr sal_Int32 ratio = state_column;
        constexpr sal_Int32 rests = second_half;
        constexpr sal_Int32 source = second_half + value_column;
        page_.section("Checks");
        page_.heads({{cell_column, "Cell"},
                     {what_column, "Check"},
                     {verdict, "Verdict"},
                     {usual_column, "Demand and capacity"},
                     {ratio, "Ratio"},
                     {rests, "Rests on"},
                     {source, "Source"}});
        for (const audit::CheckLine& check : report_.checks) {
            const std::string unit = check.unit.empty() ? std::string() : " " + check.unit;
            const std::string both = check.demand && check.capacity
                                         ? check.demand_text + unit + " of " + check.capacity_text + unit
                                         : check.shown;
            page_.row({{what_column, joined_by(check.reference, " ", check.label)},
                       {verdict, std::string(text_of(check.verdict))},
                       {ratio, check.ratio ? rounded_text(*check.ratio) : std::string()},
                       {usual_column, both},
                       {rests, std::string(text_of(check.rests))},
                       {source, check.source}});
            page_.link(cell_column, check.target, check.cells);
            if (check.verdict <= audit::CheckVerdict::error)
                page_.dress({0, verdict, verdict, look::bad, true});
            if (check.rests != audit::RestsOn::inputs) page_.dress({0, rests, rests + 1, look::fair});
        }
    }

    void findings() {
        page_.section("Findings");
        page_.heads({{cell_column, "Cell"},
                     {what_column, "What it is"},
                     {value_column, "Gravity"},
                     {template_column, "What is wrong, and what to do"},
                     {reason, std::string(head_of::reason)},
                     {who_and_when, std::string(head_of::who_and_when)}});
        if (report_.findings.empty()) {
            page_.row({{what_column, "nothing was found"}});
            return;
        }
        for (const audit::ReportFinding& finding : report_.findings) add_finding(finding);
        small_print(
            "To accept a finding, type why into its row, and a name and a date. It stays listed, and comes "
            "back when its cell or what that rests on changes.");
    }

    void add_finding(const audit::ReportFinding& finding) {
        const bool accepted = finding.accepted.has_value();
        std::vector<Placed> texts = {
            {what_column, finding.label},
            {value_column, accepted ? "accepted" : std::string(audit::text_of(finding.severity))}};
        if (finding.cells.empty()) texts.emplace_back(cell_column, "the workbook");
        if (accepted) {
            texts.emplace_back(reason, finding.accepted->reason);
            texts.emplace_back(who_and_when, joined_by(finding.accepted->name, ", ", finding.accepted->date));
        }
        const std::vector<std::string> lines = lines_of(finding.title + ": " + finding.says);
        texts.emplace_back(template_column, lines.front());
        page_.row(texts);
        if (!finding.mark.empty()) page_.record(std::string(finding_record) + finding.mark);
        if (finding.first) page_.link(cell_column, finding.target, finding.cells);
        const sal_Int32 colour = accepted                                       ? look::good
                                 : finding.severity == audit::Severity::error   ? look::bad
                                 : finding.severity == audit::Severity::warning ? look::fair
                                                                                : look::paper;
        page_.dress(
            {0, value_column, value_column, colour, !accepted && finding.severity == audit::Severity::error});
        if (!finding.mark.empty())
            page_.dress({0, reason, shown_columns - 1, look::entry, false, look::ink, 0, true});
        for (std::size_t i = 1; i < lines.size(); ++i) {
            page_.row({{template_column, lines[i]}});
        }
    }

    void revision() {
        if (!report_.revision) return;
        page_.section("Since " + report_.earlier_name);
        page_.line({{0, report_.revision->summary()}});
        page_.dress({0, 0, 0, -1, true});
        constexpr sal_Int32 was = second_half;
        constexpr sal_Int32 change = second_half + template_column;
        page_.heads({{cell_column, "Cell"},
                     {what_column, "What it is"},
                     {value_column, "Kind"},
                     {template_column, "Is"},
                     {was, "Was"},
                     {change, "Change"}});
        for (const audit::RevisionLine& line : report_.revision->lines) {
            std::vector<Placed> texts = {{what_column, line.label},
                                         {value_column, std::string(title_of(line.change))},
                                         {template_column, line.is},
                                         {was, line.was},
                                         {change, line.says}};
            if (!line.first) texts.emplace_back(cell_column, line.cells);
            page_.row(texts);
            if (line.first) page_.link(cell_column, line.target, line.cells);
            if (line.change == audit::Change::verdict)
                page_.dress({0, template_column, template_column, look::fair, true});
        }
    }

    /// Printed is what computes, sheet by sheet; behind it stand links, counts, and the checks, which have a
    /// table of their own.
    void map(bool printed) {
        for (const audit::SheetMap& sheet : report_.map) {
            bool has_head = false;
            for (const audit::MapLine& line : sheet.lines) {
                if ((line.is_link || line.is_helper || line.is_check) == printed) continue;
                if (!has_head) {
                    page_.section((printed ? "Formulas of " : "Links, counts and checks of ") + sheet.name);
                    page_.heads({{cell_column, "Cells"},
                                 {what_column, "What it is"},
                                 {value_column, "Value"},
                                 {template_column, "Units"},
                                 {usual_column, "Formula"},
                                 {equation_column, "Equation"},
                                 {why_column, "Units: why"},
                                 {rests_column, "Rests on"},
                                 {source_column, "Source"}});
                    has_head = true;
                }
                map_line(line);
            }
        }
    }

    void map_line(const audit::MapLine& line) {
        page_.row({{what_column, line.ticked ? "\xE2\x9C\x93 " + line.label : line.label},
                   {value_column, joined_by(line.value, " ", line.unit)},
                   {template_column, std::string(audit::text_of(line.verdict))},
                   {usual_column, line.formula},
                   {equation_column, line.equation},
                   {why_column, line.reason},
                   {rests_column, line.inputs},
                   {source_column, line.source}});
        page_.record(std::string(line_record) + line.mark);
        page_.link(cell_column, line.target, line.cells);
        if (line.verdict == audit::UnitVerdict::inconsistent)
            page_.dress({0, template_column, template_column, look::bad, true});
    }

    static constexpr sal_Int32 equation_column = second_half + value_column;

    const audit::Report& report_;
    const AuditRecord& record_;
    const AuditPaper& paper_;
    AuditPage page_;
    sal_Int32 printed_ = 0;
};

/// The name that only our sheet knows.
void sign_as_ours(const Reference<css::sheet::XSpreadsheet>& sheet) {
    const Reference<css::beans::XPropertySet> properties(sheet, UNO_QUERY_THROW);
    Reference<css::sheet::XNamedRanges> names;
    properties->getPropertyValue("NamedRanges") >>= names;
    const rtl::OUString name = to_oustring(audit::audit_sheet_mark);
    if (names.is() && !names->hasByName(name))
        names->addNewByName(name, to_oustring("TRUE"), css::table::CellAddress(), 0);
}

/// Links, counts and what stands right of the page stay in the sheet, and off the paper.
void set_printed(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 last_row) {
    const Reference<css::sheet::XPrintAreas> areas(sheet, UNO_QUERY);
    if (!areas.is() || last_row <= 0) return;
    const css::table::CellRangeAddress whole_sheet =
        Reference<css::sheet::XCellRangeAddressable>(sheet, UNO_QUERY_THROW)->getRangeAddress();
    css::uno::Sequence<css::table::CellRangeAddress> printed(1);
    printed.getArray()[0] = {whole_sheet.Sheet, 0, 0, shown_columns - 1, last_row};
    areas->setPrintAreas(printed);
}

void set_columns(const Reference<css::sheet::XSpreadsheet>& sheet) {
    const Reference<css::table::XTableColumns> columns =
        Reference<css::table::XColumnRowRange>(sheet, UNO_QUERY_THROW)->getColumns();
    for (sal_Int32 i = 0; i < audit_columns; ++i) {
        const Reference<css::beans::XPropertySet> column(columns->getByIndex(i), UNO_QUERY_THROW);
        column->setPropertyValue("Width", Any(widths[i]));
        if (i >= marks) column->setPropertyValue("IsVisible", Any(false));
    }
}

/// While it lives, the office paints nothing and leaves the rows' heights alone: half of the time of writing.
class Unseen {
public:
    explicit Unseen(const Reference<css::uno::XInterface>& document) : document_(document, UNO_QUERY) {
        if (document_.is()) document_->addActionLock();
    }
    Unseen(const Unseen&) = delete;
    Unseen& operator=(const Unseen&) = delete;
    ~Unseen() {
        if (document_.is()) document_->removeActionLock();
    }

private:
    Reference<css::document::XActionLockable> document_;
};

}  // namespace

void write_audit_sheet(const Reference<css::sheet::XSpreadsheetDocument>& document,
                       const audit::Report& report) {
    const Unseen unseen(document);
    const AuditRecord record = read_audit_record(document);
    const rtl::OUString name = to_oustring(audit::audit_sheet_name);
    const Reference<css::sheet::XSpreadsheets> sheets = document->getSheets();
    if (audit_sheet_of(document).is()) sheets->removeByName(name);
    sheets->insertNewByName(name, static_cast<sal_Int16>(sheets->getElementNames().getLength()));
    const Reference<css::sheet::XSpreadsheet> sheet = audit_sheet_of(document);
    set_columns(sheet);
    const AuditPaper paper(document, std::accumulate(widths, widths + shown_columns, sal_Int32(0)),
                           report.job);
    SheetComposer composer(report, record, paper);
    const AuditPage page = composer.page();
    page.write(Reference<css::lang::XMultiServiceFactory>(document, UNO_QUERY_THROW), sheet);
    sign_as_ours(sheet);
    paper.put_under(sheet);
    set_printed(sheet, composer.printed());
}

}  // namespace undercroft::addin
