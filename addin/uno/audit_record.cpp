#include "addin/uno/audit_record.hpp"

#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/text/XText.hpp>

#include <algorithm>

#include "addin/audit/book/book.hpp"
#include "addin/uno/audit_page.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr sal_Int32 farthest_row = 100000;

std::vector<std::pair<std::string, std::string>> sheets_of_text(const std::string& text) {
    std::vector<std::pair<std::string, std::string>> sheets;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find("; ", at), text.size());
        const std::size_t gap = text.rfind(' ', end - 1);
        if (gap != std::string::npos && gap > at)
            sheets.emplace_back(text.substr(at, gap - at), text.substr(gap + 1, end - gap - 1));
        at = end + 2;
    }
    return sheets;
}

void add_record(const std::string& record, audit::SignedState& state) {
    if (record.starts_with(line_record)) state.lines.insert(record.substr(line_record.size()));
    if (!record.starts_with(input_record)) return;
    const std::size_t gap = record.find('\t', input_record.size());
    if (gap == std::string::npos) return;
    state.inputs[record.substr(input_record.size(), gap - input_record.size())] = record.substr(gap + 1);
}

}  // namespace

Reference<css::sheet::XSpreadsheet> audit_sheet_of(
    const Reference<css::sheet::XSpreadsheetDocument>& document) {
    const rtl::OUString name = to_oustring(audit::audit_sheet_name);
    const Reference<css::container::XNameAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
    if (!sheets->hasByName(name)) return {};
    return Reference<css::sheet::XSpreadsheet>(sheets->getByName(name), UNO_QUERY);
}

std::vector<std::string> records_of(const audit::SignedState& state) {
    std::vector<std::string> records;
    for (const auto& [key, value] : state.inputs)
        records.push_back(std::string(input_record) + key + "\t" + value);
    for (const std::string& mark : state.lines) records.push_back(std::string(line_record) + mark);
    return records;
}

AuditRecord read_audit_record(const Reference<css::sheet::XSpreadsheetDocument>& document) {
    AuditRecord record;
    const Reference<css::sheet::XSpreadsheet> sheet = audit_sheet_of(document);
    if (!sheet.is()) return record;
    const Reference<css::sheet::XSheetCellCursor> cursor = sheet->createCursor();
    Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(false);
    const sal_Int32 last =
        Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress().EndRow;
    const Reference<css::sheet::XCellRangeData> range(
        sheet->getCellRangeByPosition(0, 0, audit_columns - 1, std::min(last, farthest_row)),
        UNO_QUERY_THROW);
    audit::SignedState of_this_audit;
    bool in_signatures = false;
    bool in_findings = false;
    bool last_is_signed = false;
    sal_Int32 at = -1;
    for (const css::uno::Sequence<Any>& row : range->getDataArray()) {
        ++at;
        const auto text = [&](sal_Int32 column) {
            rtl::OUString held;
            if (row[column] >>= held) return to_string(held);
            // A number as the cell shows it: a date stays one.
            const Reference<css::text::XText> cell(sheet->getCellByPosition(column, at), UNO_QUERY_THROW);
            return to_string(cell->getString());
        };
        add_record(text(at_signing), record.at_signing);
        const std::string mark = text(marks);
        if (text(checker) == sign_columns[0] && text(date) == sign_columns[1]) {
            in_signatures = true;
            continue;
        }
        if (in_signatures && text(whole).empty()) in_signatures = false;
        if (in_signatures) {
            last_is_signed = !text(checker).empty();
            if (!last_is_signed) continue;
            audit::Fingerprint of;
            of.whole = text(whole);
            of.sheets = sheets_of_text(text(by_sheet));
            of.parts = audit::parts_of_text(mark);
            record.signatures.push_back({text(checker), text(date), std::move(of)});
            continue;
        }
        if (text(0) == finding_columns[0] && text(reason) == finding_columns[AcceptColumn::reason])
            in_findings = true;
        if (in_findings && mark.starts_with(finding_record) && !text(reason).empty()) {
            const std::string by = text(who_and_when);
            const std::size_t comma = by.rfind(',');
            record.accepted.push_back(
                {mark.substr(finding_record.size()), text(reason), trimmed(by.substr(0, comma)),
                 comma == std::string::npos ? std::string() : trimmed(by.substr(comma + 1))});
        }
        add_record(mark, of_this_audit);
    }
    // The last row of the signatures is that of this audit: once it is signed, that is what was signed.
    if (last_is_signed && !of_this_audit.is_empty()) record.at_signing = std::move(of_this_audit);
    return record;
}

}  // namespace undercroft::addin
