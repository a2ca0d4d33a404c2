// What decides a verdict from memory says so beside the verdict.
#include <filesystem>
#include <map>
#include <regex>
#include <set>

#include "addin/catalogue/catalogue.hpp"
#include "sheets/builder/files.hpp"
#include "sheets/builder/formula_text.hpp"
#include "sheets/builder/layout.hpp"
#include "tests/support/catch.hpp"

namespace undercroft::tests {

using namespace sheets;
using Names = std::set<std::string>;

namespace {

constexpr const char* memory = "from memory";

bool is_from_memory(const std::string& text) {
    return text.find(memory) != std::string::npos;
}

/// The functions of a formula and the keys that it uses.
struct Used {
    Names functions;
    Names keys;

    void add(const std::string& formula) {
        static const std::regex function("UC\\.[A-Z0-9.]*[A-Z0-9]");
        for (std::sregex_iterator at(formula.begin(), formula.end(), function), end; at != end; ++at)
            functions.insert(at->str());
        for (const std::string& key : keys_in(formula)) keys.insert(key.substr(0, key.find('.')));
    }
    void add(const DualText& formula) {
        add(formula.si);
        add(formula.us);
    }
    void add(const rows::Comparison& comparison) {
        for (const std::string& key : {comparison.left, comparison.right, comparison.condition})
            if (!key.empty()) keys.insert(key);
    }
};

Used used_by(const Row& row) {
    Used used;
    if (const auto* result = row.as<rows::Result>()) used.add(result->formula);
    if (const auto* words = row.as<rows::Words>()) used.add(words->formula);
    if (const auto* table = row.as<rows::Table>()) used.add(table->formula);
    if (const auto* check = row.as<rows::Check>())
        for (const rows::Demand& demand : {check->demand.si, check->demand.us}) {
            if (const auto* comparison = std::get_if<rows::Comparison>(&demand)) used.add(*comparison);
            if (const auto* ruling = std::get_if<rows::Ruling>(&demand)) used.add(ruling->formula);
        }
    if (const auto* list = row.as<rows::List>()) {
        for (const Column& column : list->columns) used.add(column.formula);
        for (const rows::Item& item : list->items)
            for (const DualText& cell : item.cells)
                if (cell.si.starts_with("=")) used.add(cell);
    }
    return used;
}

/// The rows of all sheets by their keys, each where it is computed or typed.
class RowsByKey {
public:
    explicit RowsByKey(const std::vector<Sheet>& sheets) {
        for (const Sheet& sheet : sheets)
            for (const Row& row : sheet.rows)
                if (!row.key.empty() && !row.is<rows::Given>()) rows_.emplace(row.key, &row);
    }

    /// Of a key, or of the table or list whose column it names.
    [[nodiscard]] const Row* find(std::string key) const {
        while (true) {
            if (const auto found = rows_.find(key); found != rows_.end()) return found->second;
            const std::size_t end = key.rfind('_');
            if (end == std::string::npos) return nullptr;
            key.resize(end);
        }
    }

private:
    std::map<std::string, const Row*> rows_;
};

/// The functions from memory on which a row rests, through results, words and tables; and the limits that it
/// compares with, typed in from memory.
Names from_memory_under(const Row& row, const RowsByKey& rows) {
    Names found;
    Names seen = {row.key};
    std::vector<const Row*> open = {&row};
    while (!open.empty()) {
        const Row& now = *open.back();
        open.pop_back();
        const Used used = used_by(now);
        for (const std::string& name : used.functions) {
            const addin::Function* function = addin::find_function(name);
            if (function != nullptr && is_from_memory(function->source)) found.insert(name);
        }
        for (const std::string& key : used.keys) {
            const Row* under = rows.find(key);
            if (under == nullptr || !seen.insert(under->key).second) continue;
            if (&now == &row && under->is<rows::Input>() && is_from_memory(under->note))
                found.insert(under->key);
            if (under->is<rows::Result>() || under->is<rows::Words>() || under->is<rows::Table>())
                open.push_back(under);
        }
    }
    return found;
}

std::vector<Sheet> all_sheets() {
    return read_sheets(std::filesystem::path(PROJECT_FOLDER) / "sheets" / "text");
}

}  // namespace

TEST_CASE("a verdict that rests on what is from memory says so beside it") {
    const std::vector<Sheet> sheets = all_sheets();
    const RowsByKey rows(sheets);
    int checks = 0;
    int remembered = 0;
    for (const Sheet& sheet : sheets)
        for (const Row& row : sheet.rows) {
            if (!row.is<rows::Check>() && verdict_column(row) == nullptr) continue;
            ++checks;
            const Names found = from_memory_under(row, rows);
            std::string names;
            for (const std::string& name : found) names += name + " ";
            CAPTURE(sheet.name, row.key, row.note, names);
            CHECK((found.empty() || is_from_memory(row.note)));
            if (!found.empty()) ++remembered;
        }
    CHECK(checks >= 61);
    CHECK(remembered >= 20);
}

TEST_CASE("what rests on memory is found through the rows between") {
    const std::vector<Sheet> sheets = {read_sheet(
        "sheet Pit | P\nresult cone_cbr | C | | % | UC.BEARING.CBR(\"12 mm\")\n"
        "result cbr_half | H | | % | cone_cbr.value/2\ninput least_cbr | L | | 5 % | usual 2..15 % | From a "
        "book\n"
        "input least_seen | L | | 5 % | usual 2..15 % | Code (from memory)\n"
        "result base_length | B | | m | UC.BED.LENGTH(\"1 m\"; \"1 m\"; @)\n"
        "check c_c | C | cbr_half >= least_cbr\ncheck d_d | D | base_length >= least_cbr\n"
        "check e_e | E | base_length >= least_seen\ncheck f_f | F | = UC.BEARING.CBR(\"12 mm\") >= 5\n")};
    const RowsByKey rows(sheets);
    CHECK(from_memory_under(*rows.find("c_c"), rows) == Names{"UC.BEARING.CBR"});
    CHECK(from_memory_under(*rows.find("d_d"), rows).empty());
    CHECK(from_memory_under(*rows.find("e_e"), rows) == Names{"least_seen"});
    CHECK(from_memory_under(*rows.find("f_f"), rows) == Names{"UC.BEARING.CBR"});
}

}  // namespace undercroft::tests
