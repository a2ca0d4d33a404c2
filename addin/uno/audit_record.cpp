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
#include <vector>

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
constexpr std::string_view fingerprint_head = "Fingerprint";

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

namespace {

/// The sheet as texts; numbers as their cells show them, since a date stays one.
class Lines {
public:
    explicit Lines(const Reference<css::sheet::XSpreadsheet>& sheet) : sheet_(sheet) {
        const Reference<css::sheet::XSheetCellCursor> cursor = sheet->createCursor();
        Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(false);
        const sal_Int32 last =
            Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress().EndRow;
        data_ = Reference<css::sheet::XCellRangeData>(
                    sheet->getCellRangeByPosition(0, 0, audit_columns - 1, std::min(last, farthest_row)),
                    UNO_QUERY_THROW)
                    ->getDataArray();
    }
    [[nodiscard]] sal_Int32 rows() const { return data_.getLength(); }
    [[nodiscard]] std::string text(sal_Int32 row, sal_Int32 column) const {
        if (column < 0) return {};
        rtl::OUString held;
        if (data_[row][column] >>= held) return to_string(held);
        const Reference<css::text::XText> cell(sheet_->getCellByPosition(column, row), UNO_QUERY_THROW);
        return to_string(cell->getString());
    }
    /// The column of a row that holds this text; -1 where none does.
    [[nodiscard]] sal_Int32 column(sal_Int32 row, std::string_view head) const {
        for (sal_Int32 c = 0; c < audit_columns; ++c)
            if (rtl::OUString held; (data_[row][c] >>= held) && to_string(held) == head) return c;
        return -1;
    }

private:
    Reference<css::sheet::XSpreadsheet> sheet_;
    css::uno::Sequence<css::uno::Sequence<Any>> data_;
};

std::vector<std::string> records_in(const std::string& kept) {
    std::vector<std::string> records;
    for (std::size_t at = 0; at <= kept.size();) {
        const std::size_t end = std::min(kept.find(between_records, at), kept.size());
        records.push_back(kept.substr(at, end - at));
        at = end + between_records.size();
    }
    return records;
}

class RecordReader {
public:
    explicit RecordReader(const Lines& lines) : lines_(lines) {}

    AuditRecord record() {
        for (sal_Int32 row = 0; row < lines_.rows(); ++row) {
            add_record(lines_.text(row, at_signing), record_.at_signing);
            if (read_heads(row)) continue;
            if (whole_ >= 0) read_signature(row);
            for (const std::string& one : records_in(lines_.text(row, marks))) {
                add_record(one, of_this_audit_);
                if (one.starts_with(finding_record)) read_acceptance(row, one);
            }
        }
        // The last row of the signatures is that of this audit: once it is signed, that is what was signed.
        if (last_is_signed_ && !of_this_audit_.is_empty()) record_.at_signing = std::move(of_this_audit_);
        return std::move(record_);
    }

private:
    bool read_heads(sal_Int32 row) {
        const sal_Int32 checker = lines_.column(row, head_of::checker);
        if (checker >= 0 && lines_.text(row, checker + 1) == head_of::date) {
            checker_ = checker;
            by_sheet_ = lines_.column(row, head_of::by_sheet);
            for (sal_Int32 c = checker; c < audit_columns; ++c)
                if (lines_.text(row, c).starts_with(fingerprint_head)) whole_ = c;
            return true;
        }
        const sal_Int32 because = lines_.column(row, head_of::reason);
        if (because < 0) return false;
        reason_ = because;
        name_ = lines_.column(row, head_of::who_and_when);
        return true;
    }

    void read_signature(sal_Int32 row) {
        audit::Fingerprint of;
        of.whole = lines_.text(row, whole_);
        if (of.whole.empty()) {
            whole_ = -1;
            return;
        }
        const std::string name = lines_.text(row, checker_);
        last_is_signed_ = !name.empty();
        if (!last_is_signed_) return;
        of.sheets = sheets_of_text(lines_.text(row, by_sheet_));
        of.parts = audit::parts_of_text(lines_.text(row, marks));
        record_.signatures.push_back({name, lines_.text(row, checker_ + 1), std::move(of)});
    }

    void read_acceptance(sal_Int32 row, const std::string& mark) {
        const std::string because = lines_.text(row, reason_);
        if (because.empty()) return;
        const std::string by = lines_.text(row, name_);
        const std::size_t comma = by.rfind(',');
        record_.accepted.push_back(
            {mark.substr(finding_record.size()), because, trimmed(by.substr(0, comma)),
             comma == std::string::npos ? std::string() : trimmed(by.substr(comma + 1))});
    }

    const Lines& lines_;
    AuditRecord record_;
    audit::SignedState of_this_audit_;
    bool last_is_signed_ = false;
    sal_Int32 checker_ = -1;
    sal_Int32 whole_ = -1;
    sal_Int32 by_sheet_ = -1;
    sal_Int32 reason_ = -1;
    sal_Int32 name_ = -1;
};

}  // namespace

AuditRecord read_audit_record(const Reference<css::sheet::XSpreadsheetDocument>& document) {
    const Reference<css::sheet::XSpreadsheet> sheet = audit_sheet_of(document);
    if (!sheet.is()) return {};
    const Lines lines(sheet);
    return RecordReader(lines).record();
}

}  // namespace undercroft::addin
