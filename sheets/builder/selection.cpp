#include "sheets/builder/selection.hpp"

#include <algorithm>
#include <stdexcept>

#include "sheets/builder/formula_text.hpp"

namespace undercroft::sheets {

void sheet_mistake(const Sheet& sheet, int line, const std::string& why) {
    throw std::runtime_error("sheet " + sheet.name + ", line " + std::to_string(line) + ": " + why);
}

namespace {

/// Of this sheet only the rows stand that others use.
constexpr std::string_view site = "Site";

bool defines_always(const Row& row) {
    return !row.key.empty() && !row.is<rows::Given>() && !row.is<rows::Chart>() && !row.is<rows::Picture>();
}

/// The keys that the cells of a kind of row are computed from.
class KeysUsed {
public:
    explicit KeysUsed(System system) : system_(system) {}

    void operator()(const rows::Result& result) { add(result.formula); }
    void operator()(const rows::Words& words) { add(words.formula); }
    void operator()(const rows::Table& table) { add(table.formula); }
    void operator()(const rows::Check& check) {
        std::visit(Overloaded{[this](const rows::Ruling& ruling) {
                                  add(ruling.formula);
                                  add(ruling.words);
                                  if (ruling.numbers) add(*ruling.numbers);
                              },
                              [this](const rows::Comparison& comparison) { add(comparison); }},
                   check.demand.in(system_));
    }
    void operator()(const rows::List& list) {
        for (const Column& column : list.columns) add(column.formula);
        for (const rows::Item& item : list.items)
            for (const DualText& cell : item.cells)
                if (cell.in(system_).starts_with("=")) add(cell);
    }
    void operator()(const rows::Chart& chart) { keys_.push_back(chart.table); }
    void operator()(const rows::Picture& picture) {
        for (const rows::Outline& outline : picture.outlines) keys_.push_back(outline.table);
    }
    template <class Kind>
    void operator()(const Kind&) {}  // typed in, or no cells of its own

    [[nodiscard]] std::vector<std::string> keys() && { return std::move(keys_); }

private:
    void add(const DualText& formula) { add(formula.in(system_)); }
    void add(const rows::Comparison& comparison) {
        keys_.push_back(comparison.left);
        keys_.push_back(comparison.right);
        if (!comparison.condition.empty()) keys_.push_back(comparison.condition);
    }
    void add(const std::string& formula) {
        for (std::string& key : keys_in(formula)) keys_.push_back(std::move(key));
    }

    System system_;
    std::vector<std::string> keys_;
};

std::vector<std::string> keys_used(const Sheet& sheet, const Row& row, System system) {
    try {
        KeysUsed used(system);
        std::visit(used, row.kind);
        return std::move(used).keys();
    } catch (const std::runtime_error& error) {
        sheet_mistake(sheet, row.line, error.what());
    }
}

/// A list or grid is used by its key, and by that of one of its columns: `site_layer_height`.
bool uses_row(const std::set<std::string>& used, const Row& row) {
    if (used.contains(row.key)) return true;
    const std::vector<Column>* columns = columns_of(row);
    return columns != nullptr && std::any_of(columns->begin(), columns->end(), [&](const Column& column) {
               return !column.name.empty() && used.contains(row.key + "_" + column.name);
           });
}

/// A heading with nothing but remarks under it says nothing.
void drop_empty_sections(Sheet& sheet) {
    std::vector<Row> kept;
    const auto is_section = [](const Row& row) { return row.is<rows::Section>(); };
    for (auto row = sheet.rows.begin(); row != sheet.rows.end();) {
        const auto end = std::find_if(row + 1, sheet.rows.end(), is_section);
        const bool says = std::any_of(row, end, [](const Row& under) { return !under.key.empty(); });
        if (says || !is_section(*row)) kept.insert(kept.end(), row, end);
        row = end;
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
            if (row.is<rows::Given>() && definitions_.insert(row.key).second)
                first_given_[row.key] = {sheet.name, row.line};
}

bool Selection::is_link(const Sheet& sheet, const Row& row) const {
    if (!row.is<rows::Given>()) return false;
    const auto first = first_given_.find(row.key);
    return first == first_given_.end() || first->second != std::pair(sheet.name, row.line);
}

bool Selection::defines(const Sheet& sheet, const Row& row) const {
    return defines_always(row) || (row.is<rows::Given>() && !is_link(sheet, row));
}

void Selection::keep_what_is_used() {
    std::set<std::string> used;
    const auto use = [&](const Sheet& sheet, const Row& row) {
        for (const std::string& key : keys_used(sheet, row, system_)) used.insert(key);
    };
    for (const Sheet& sheet : sheets_) {
        if (sheet.name == site) continue;
        for (const Row& row : sheet.rows) {
            use(sheet, row);
            if (row.is<rows::Given>()) used.insert(row.key);
        }
    }
    for (Sheet& sheet : sheets_) {
        if (sheet.name != site) continue;
        // What a row of Site uses is used, too; a check of Site stands where all that it compares stands.
        for (std::size_t before = 0; before != used.size();) {
            before = used.size();
            for (const Row& row : sheet.rows)
                if (uses_row(used, row)) use(sheet, row);
        }
        const auto needed = [&](const Row& row) {
            if (row.is<rows::Check>()) {
                const auto keys = keys_used(sheet, row, system_);
                return std::all_of(keys.begin(), keys.end(),
                                   [&](const std::string& key) { return used.contains(key); });
            }
            return row.key.empty() || uses_row(used, row);
        };
        std::erase_if(sheet.rows, [&](const Row& row) { return !needed(row); });
        drop_empty_sections(sheet);
    }
}

}  // namespace undercroft::sheets
