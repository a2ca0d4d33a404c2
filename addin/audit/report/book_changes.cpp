#include "addin/audit/report/book_changes.hpp"

#include <algorithm>

namespace undercroft::audit {

namespace {

/// Rows that follow each other as one block.
template <class Visit>
void each_block(const std::vector<std::int32_t>& rows, const Visit& visit) {
    for (std::size_t i = 0; i < rows.size();) {
        std::size_t end = i + 1;
        while (end < rows.size() && rows[end] == rows[end - 1] + 1) ++end;
        visit(rows[i], rows[end - 1]);
        i = end;
    }
}

std::vector<std::int32_t> filled_rows(const BookSheet& sheet) {
    std::vector<std::int32_t> rows;
    for (const BookCell& cell : sheet.cells)
        if (rows.empty() || rows.back() != cell.row) rows.push_back(cell.row);
    return rows;
}

class Changes {
public:
    Changes(const AuditedBook& now, const TemplateMatch& match, std::vector<RevisionLine>& lines)
        : now_(now), match_(match), then_(match.from()), labels_(match.from(), now.texts), lines_(lines) {}

    void add_all() {
        add_sheets();
        for (std::int32_t s = 0; s < static_cast<std::int32_t>(then_.sheets.size()); ++s)
            if (match_.sheet(s) >= 0 && !is_audit_sheet(sheet_then(s))) add_rows(s);
        add_names();
        add_settings();
    }

private:
    [[nodiscard]] const BookSheet& sheet_then(std::int32_t s) const {
        return then_.sheets[static_cast<std::size_t>(s)];
    }
    [[nodiscard]] const BookSheet& sheet_now(std::int32_t s) const { return now_.sheet(s); }

    void tell(Change change, std::string cells, std::string was, std::string is, std::string says = {}) {
        RevisionLine line;
        line.change = change;
        line.cells = std::move(cells);
        line.was = std::move(was);
        line.is = std::move(is);
        line.says = std::move(says);
        lines_.push_back(std::move(line));
    }

    void add_sheets() {
        std::vector<bool> known(now_.book.sheets.size());
        for (std::int32_t s = 0; s < static_cast<std::int32_t>(then_.sheets.size()); ++s) {
            const BookSheet& was = sheet_then(s);
            const std::int32_t place = match_.sheet(s);
            if (is_audit_sheet(was)) {
                if (place >= 0) known[static_cast<std::size_t>(place)] = true;
                continue;
            }
            if (place < 0) {
                tell(Change::sheet, was.name, was.name, "nothing", "deleted");
                continue;
            }
            known[static_cast<std::size_t>(place)] = true;
            const BookSheet& is = sheet_now(place);
            if (was.name != is.name) tell(Change::sheet, is.name, was.name, is.name, "renamed");
            const auto yes_or_no = [](bool yes) { return std::string(yes ? "yes" : "no"); };
            if (was.hidden != is.hidden)
                tell(Change::setting, is.name, yes_or_no(was.hidden), yes_or_no(is.hidden), "sheet hidden");
            if (was.is_protected != is.is_protected)
                tell(Change::setting, is.name, yes_or_no(was.is_protected), yes_or_no(is.is_protected),
                     "sheet protected");
        }
        for (std::size_t s = 0; s < known.size(); ++s)
            if (!known[s] && !is_audit_sheet(now_.book.sheets[s]))
                tell(Change::sheet, now_.book.sheets[s].name, "nothing", now_.book.sheets[s].name,
                     "inserted");
    }

    void add_rows(std::int32_t s) {
        const std::int32_t place = match_.sheet(s);
        const Alignment& rows = match_.rows(s);
        std::vector<std::int32_t> gone;
        for (const std::int32_t row : filled_rows(sheet_then(s)))
            if (rows.row(row) < 0) gone.push_back(row);
        each_block(gone, [&](std::int32_t first, std::int32_t last) {
            tell(Change::row, sheet_then(s).name, rows_text(first, last), "nothing", "deleted");
            lines_.back().label = labels_.of_row({s, first, then_.columns(s)});
        });
        std::vector<std::int32_t> added;
        for (const std::int32_t row : filled_rows(sheet_now(place)))
            if (std::binary_search(rows.added.begin(), rows.added.end(), row)) added.push_back(row);
        each_block(added, [&](std::int32_t first, std::int32_t last) {
            tell(Change::row, sheet_now(place).name, "nothing", rows_text(first, last), "inserted");
            lines_.back().label = now_.labels.of_row({place, first, now_.book.columns(place)});
        });
        for (const std::int32_t row : rows.moved) {
            tell(Change::row, sheet_now(place).name, rows_text(row, row),
                 rows_text(rows.row(row), rows.row(row)), "moved");
            lines_.back().label = labels_.of_row({s, row, then_.columns(s)});
        }
    }

    void add_names() {
        const Names names(then_);
        for (const DefinedName& name : then_.names) {
            const NameMeaning* was = names.find(name.name, name.sheet);
            const NameMeaning* is = now_.names.find(name.name, name.sheet);
            if (is == nullptr) {
                tell(Change::name, name.name, name.content, "nothing", "deleted");
                continue;
            }
            if (was == nullptr || !was->readable || was->tree.kind != addin::NodeKind::reference) {
                if (is->defined->content != name.content)
                    tell(Change::name, name.name, name.content, is->defined->content);
                continue;
            }
            const std::string should = match_.moved(was->tree.reference, name.base, name.base);
            std::string stands = "?";
            if (is->readable && is->tree.kind == addin::NodeKind::reference)
                if (const auto area =
                        area_of(now_.book, is->tree.reference, is->defined->base, is->defined->base))
                    stands = now_.book.text(*area);
            if (stands != should) tell(Change::name, name.name, name.content, is->defined->content);
        }
        for (const DefinedName& name : now_.book.names)
            if (names.find(name.name, name.sheet) == nullptr)
                tell(Change::name, name.name, "nothing", name.content, "defined");
    }

    void add_settings() {
        const auto compare = [&](bool was, bool is, const char* what) {
            if (was != is) tell(Change::setting, "the workbook", was ? "yes" : "no", is ? "yes" : "no", what);
        };
        const Book& now = now_.book;
        compare(then_.computes_by_itself, now.computes_by_itself, "computes by itself");
        compare(then_.iterates, now.iterates, "circles are repeated until they settle");
        compare(then_.rounds_to_shown, now.rounds_to_shown, "results cut to the digits shown");
        compare(then_.has_macros, now.has_macros, "holds macros");
        if (then_.null_date != now.null_date)
            tell(Change::setting, "the workbook", then_.null_date, now.null_date,
                 "day from which dates count");
        for (const auto& [name, value] : then_.properties) {
            const auto found = now.properties.find(name);
            const std::string is = found == now.properties.end() ? "nothing" : found->second;
            if (is != value) tell(Change::setting, "the workbook", value, is, name);
        }
    }

    const AuditedBook& now_;
    const TemplateMatch& match_;
    const Book& then_;
    Labels labels_;
    std::vector<RevisionLine>& lines_;
};

}  // namespace

void add_book_changes(const AuditedBook& now, const TemplateMatch& match, std::vector<RevisionLine>& lines) {
    Changes(now, match, lines).add_all();
}

}  // namespace undercroft::audit
