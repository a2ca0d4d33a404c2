#include "sheets/builder/selection.hpp"

#include <algorithm>
#include <stdexcept>

#include "sheets/builder/formula_text.hpp"

namespace undercroft::sheets {

void sheet_mistake(const Sheet& sheet, int line, const std::string& why) {
    throw std::runtime_error("sheet " + sheet.name + ", line " + std::to_string(line) + ": " + why);
}

namespace {

bool defines_always(const Row& row) {
    using Kind = Row::Kind;
    return !row.key.empty() && row.kind != Kind::given && row.kind != Kind::chart &&
           row.kind != Kind::picture;
}

/// The keys that a row's cells are computed from.
std::vector<std::string> keys_used(const Row& row, System system) {
    std::vector<std::string> keys = keys_in(row.formula.in(system));
    if (row.kind == Row::Kind::table)
        for (const std::string& key : keys_in(row.height)) keys.push_back(key);
    for (const ListColumn& column : row.columns)
        for (const std::string& key : keys_in(column.formula)) keys.push_back(key);
    if (row.kind == Row::Kind::list)
        for (const auto& item : row.items)
            for (const ListCell& cell : item)
                if (const std::string& text = cell.text.in(system); text.starts_with("="))
                    for (const std::string& key : keys_in(text)) keys.push_back(key);
    return keys;
}

/// A heading with nothing but remarks under it says nothing.
void drop_empty_sections(Sheet& sheet) {
    std::vector<Row> kept;
    for (std::size_t i = 0; i < sheet.rows.size();) {
        if (sheet.rows[i].kind != Row::Kind::section) {
            kept.push_back(sheet.rows[i++]);
            continue;
        }
        std::size_t end = i + 1;
        bool says = false;
        for (; end < sheet.rows.size() && sheet.rows[end].kind != Row::Kind::section; ++end)
            says = says || !sheet.rows[end].key.empty();
        if (says)
            kept.insert(kept.end(), sheet.rows.begin() + static_cast<std::ptrdiff_t>(i),
                        sheet.rows.begin() + static_cast<std::ptrdiff_t>(end));
        i = end;
    }
    sheet.rows = std::move(kept);
}

}  // namespace

Selection::Selection(const WorkbookText& workbook, const std::vector<Sheet>& all, System system)
    : system_(system) {
    for (const std::string& name : workbook.sheets) {
        const auto found =
            std::find_if(all.begin(), all.end(), [&](const Sheet& sheet) { return sheet.name == name; });
        if (found == all.end())
            throw std::runtime_error("workbook " + workbook.name + ": there is no sheet " + name);
        sheets_.push_back(*found);
    }
    for (Sheet& sheet : sheets_)
        std::erase_if(sheet.rows, [&](const Row& row) {
            const auto& names = workbook.sheets;
            return !row.when.empty() && std::find(names.begin(), names.end(), row.when) == names.end();
        });
    find_definitions();
    keep_what_is_used();
}

void Selection::find_definitions() {
    for (const Sheet& sheet : sheets_)
        for (const Row& row : sheet.rows)
            if (defines_always(row) && !definitions_.insert(row.key).second)
                sheet_mistake(sheet, row.line, "the key " + row.key + " stands twice");
    for (const Sheet& sheet : sheets_)
        for (const Row& row : sheet.rows)
            if (row.kind == Row::Kind::given && definitions_.insert(row.key).second)
                first_given_[row.key] = {sheet.name, row.line};
}

bool Selection::is_link(const Sheet& sheet, const Row& row) const {
    if (row.kind != Row::Kind::given) return false;
    const auto first = first_given_.find(row.key);
    return first == first_given_.end() || first->second != std::pair(sheet.name, row.line);
}

bool Selection::defines(const Sheet& sheet, const Row& row) const {
    return defines_always(row) || (row.kind == Row::Kind::given && !is_link(sheet, row));
}

void Selection::keep_what_is_used() {
    std::set<std::string> used;
    const auto use = [&](const Row& row) {
        for (const std::string& key : keys_used(row, system_)) used.insert(key);
    };
    for (const Sheet& sheet : sheets_) {
        if (sheet.name == "Site") continue;
        for (const Row& row : sheet.rows) {
            use(row);
            if (row.kind == Row::Kind::given) used.insert(row.key);
            if (row.kind == Row::Kind::chart) used.insert(row.source_table);
        }
    }
    for (Sheet& sheet : sheets_) {
        if (sheet.name != "Site") continue;
        // What a row of Site uses is used, too; a check of Site stands where all that it compares stands.
        for (bool grown = true; grown;) {
            grown = false;
            const std::size_t before = used.size();
            for (const Row& row : sheet.rows)
                if (used.contains(row.key)) use(row);
            grown = used.size() != before;
        }
        const auto needed = [&](const Row& row) {
            if (row.kind == Row::Kind::check) {
                const auto keys = keys_used(row, system_);
                return std::all_of(keys.begin(), keys.end(),
                                   [&](const std::string& key) { return used.contains(key); });
            }
            return row.key.empty() || used.contains(row.key);
        };
        std::erase_if(sheet.rows, [&](const Row& row) { return !needed(row); });
        drop_empty_sections(sheet);
    }
}

}  // namespace undercroft::sheets
