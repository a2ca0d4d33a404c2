#include "sheets/builder/entries.hpp"

#include <boost/algorithm/string/join.hpp>
#include <cmath>

#include "sheets/builder/formula_text.hpp"
#include "sheets/builder/helper_columns.hpp"

namespace undercroft::sheets {

namespace {

using boost::algorithm::join;
using Words = std::vector<std::string>;

/// Whether a cell shows its number as it is. `40%` typed in leaves 0.4 and the look of a percentage, `0:05` a
/// share of a day: the unit beside it is then another than that of what is read.
std::string shows_number(const std::string& cell) {
    return "ISERROR(FIND(LEFT(CELL(\"FORMAT\";" + cell + "));\"PD\"))";
}
constexpr const char* as_it_is = ", not shown as % or date (Ctrl+M)";

/// The helper cells of one row.
class HelperRow {
public:
    HelperRow(CellWriter& writer, int at) : writer_(writer), at_(at) {}

    [[nodiscard]] int column(Helper helper) const { return helper_column(writer_.sheet(), helper); }
    [[nodiscard]] std::string cell(Helper helper) const { return cell(column(helper)); }
    [[nodiscard]] std::string cell(int column) const { return "[." + cell_text(at_, column) + "]"; }

    void compute(Helper helper, const std::string& formula) {
        writer_.put_formula(at_, column(helper), "OpenCount", formula);
    }
    /// 1 while the condition does not hold, or shows an error.
    void count_unless(Helper helper, const std::string& condition) {
        compute(helper, "IF(ISERROR(1/" + condition + ");1;0)");
    }
    void keep(Helper helper, const std::string& text) { keep(column(helper), text); }
    void keep(Helper helper, double number) { keep(column(helper), number); }
    void keep(int column, const std::string& text) { writer_.put_text(at_, column, "Kept", text); }
    void keep(int column, double number) { writer_.put_number(at_, column, "Kept", number); }

    void keep_template(const Entry& entry, int number) {
        const int value = template_value_column(writer_.sheet(), number);
        if (entry.number)
            keep(value, *entry.number);
        else if (!entry.text.empty())
            keep(value, entry.text);
        if (!entry.unit.empty()) keep(template_unit_column(writer_.sheet(), number), entry.unit);
    }
    void put_mark() { writer_.put(at_, mark_column(writer_.sheet()), mark_style); }
    [[nodiscard]] std::string mark() const { return cell(mark_column(writer_.sheet())); }
    [[nodiscard]] std::string template_value(int number) const {
        return cell(template_value_column(writer_.sheet(), number));
    }
    [[nodiscard]] std::string template_unit(int number) const {
        return cell(template_unit_column(writer_.sheet(), number));
    }

    /// Cells that are blank on rows of another kind are only looked at.
    void put_state() {
        const auto counts = [](const std::string& condition) { return "ISERROR(1/(" + condition + "))"; };
        compute(Helper::state, "IF(" + counts(cell(Helper::to_give) + "<>1") + ";\"to give\";IF(" +
                                   counts(cell(Helper::impossible) + "+" + cell(Helper::not_listed) + "=0") +
                                   ";\"impossible: \"&" + cell(Helper::possible_words) + ";IF(" +
                                   counts(cell(Helper::unusual) + "<>1") + ";\"unusual: usual is \"&" +
                                   cell(Helper::usual_words) + ";IF(" +
                                   counts(cell(Helper::assumed) + "<>1") + ";\"assumed\";\"\"))))");
    }
    void mark_when(int column, const std::string& when, const std::string& look) {
        SheetGrid& grid = writer_.grid();
        grid.conditions[{at_, column}].push_back({when, grid.cells.at({at_, column}).style + look});
    }
    void mark_when_assumed() {
        mark_when(mark_column(writer_.sheet()), cell(Helper::assumed) + "=1", "Wanted");
    }

private:
    CellWriter& writer_;
    int at_;
};

/// A number of a range as a cell holds it; a share where it has no unit, since a bare number is none of ours.
std::string end_text(double number, const std::string& unit) {
    if (!unit.empty() && unit != "1") return quantity_text(number, unit);
    constexpr double per_cent = 100;
    constexpr double whole = 1e9;
    return quantity_text(std::round(number * per_cent * whole) / whole, "%");
}

/// Whether a cell lies between two others.
std::string between(const std::string& cell, const std::string& low, const std::string& high) {
    return "AND(" + cell + ">=" + low + ";" + cell + "<=" + high + ")";
}

/// 0 is either a number that needs no range or counts as not given.
std::string unless_zero(const std::string& cell, const std::string& condition) {
    return "OR(" + cell + "=0;" + condition + ")";
}

/// The mark is blank, and value and unit are those of the template.
std::string is_untouched(const HelperRow& helpers, const Words& same) {
    return "AND(" + helpers.mark() + "=\"\";" + join(same, ";") + ")";
}

/// The note, with the state before or instead of it.
void put_note_with_state(CellWriter& writer, const Row& row, HelperRow& helpers, int at) {
    if (!row.note.empty()) helpers.keep(Helper::kept_note, row.note);
    const std::string state = helpers.cell(Helper::state);
    const std::string note = helpers.cell(Helper::kept_note);
    writer
        .put_formula(at, note_column, "Note",
                     "IF(" + state + "=\"\";" + note + "&\"\";IF(" + state + "=\"assumed\";" + state +
                         "&IF(LEN(" + note + ")>0;\"; \";\"\")&" + note + ";" + state + "))")
        .columns = writer.note_columns();
}

void finish_row(CellWriter& writer, const Row& row, HelperRow& helpers, int at) {
    helpers.put_state();
    put_note_with_state(writer, row, helpers, at);
    const std::string wrong = helpers.cell(Helper::to_give) + "+" + helpers.cell(Helper::impossible) + "+" +
                              helpers.cell(Helper::not_listed) + ">0";
    helpers.mark_when(value_column, wrong, "Wrong");
    helpers.mark_when(value_column, helpers.cell(Helper::unusual) + "=1", "Unusual");
    helpers.mark_when_assumed();
}

void count_assumed(HelperRow& helpers, const Entry& entry) {
    helpers.put_mark();
    helpers.keep_template(entry, 0);
    const Words same = {helpers.cell(value_column) + "=" + helpers.template_value(0),
                        helpers.cell(unit_column) + "&\"\"=" + helpers.template_unit(0)};
    helpers.compute(Helper::assumed, "IF(ISERROR(1/" + is_untouched(helpers, same) + ");0;1)");
}

void count_to_give(HelperRow& helpers, bool or_zero) {
    helpers.keep(Helper::kept_number, or_zero ? 1 : 0);
    const std::string cell = helpers.cell(value_column);
    helpers.count_unless(Helper::to_give, "AND(LEN(" + cell + ")>0;OR(" + cell + "<>0;" +
                                              helpers.cell(Helper::kept_number) + "=1))");
}

/// An end of a range, as it is kept and in the unit that stands beside the entry.
void keep_end(HelperRow& helpers, Helper text, Helper end, double number, const std::string& unit) {
    helpers.keep(text, end_text(number, unit));
    helpers.compute(end, "IFERROR(UNDERCROFT.UC.CONVERT(" + helpers.cell(text) + ";" +
                             helpers.cell(unit_column) + "&\"\");\"-\")");
}

void keep_ranges(HelperRow& helpers, const Usual& usual, const std::string& unit) {
    keep_end(helpers, Helper::least_text, Helper::least, usual.possible.low, usual.unit);
    keep_end(helpers, Helper::most_text, Helper::most, usual.possible.high, usual.unit);
    keep_end(helpers, Helper::usual_least_text, Helper::usual_least, usual.usual.low, usual.unit);
    keep_end(helpers, Helper::usual_most_text, Helper::usual_most, usual.usual.high, usual.unit);
    helpers.keep(Helper::usual_words, range_words(usual.usual, usual, unit));
    helpers.keep(Helper::possible_words, range_words(usual.possible, usual, unit) + as_it_is);
}

}  // namespace

void watch_input(CellWriter& writer, const Row& row, const Entry& entry, int at) {
    HelperRow helpers(writer, at);
    const Usual& usual = *entry.usual;
    const std::string cell = helpers.cell(value_column);
    count_to_give(helpers, usual.or_zero);
    if (usual.any) {
        helpers.count_unless(Helper::impossible, "AND(OR(LEN(" + cell + ")=0;ISNUMBER(" + cell + "));" +
                                                     shows_number(cell) + ")");
        helpers.keep(Helper::possible_words, std::string("a number is wanted") + as_it_is);
    } else {
        try {
            keep_ranges(helpers, usual, entry.unit);
        } catch (const std::runtime_error& error) {
            writer.mistake(row.line, error.what());
        }
        const std::string inside =
            unless_zero(cell, between(cell, helpers.cell(Helper::least), helpers.cell(Helper::most)));
        helpers.count_unless(Helper::impossible, "AND(" + inside + ";" + shows_number(cell) + ")");
        helpers.count_unless(
            Helper::unusual,
            "OR(" + helpers.cell(Helper::impossible) + "=1;" + cell + "=0;" +
                between(cell, helpers.cell(Helper::usual_least), helpers.cell(Helper::usual_most)) + ")");
    }
    count_assumed(helpers, entry);
    finish_row(writer, row, helpers, at);
}

namespace {

/// A slope of walls and the like: a text that is read as a number.
void watch_range_of_text(HelperRow& helpers, const Usual& usual) {
    const std::string cell = "UNDERCROFT.UC.CONVERT(" + helpers.cell(value_column) + ";" +
                             quoted(usual.unit.empty() ? "1" : usual.unit) + ")";
    const auto inside = [&](const Range& range) {
        const auto end = [&](double number) {
            return "UNDERCROFT.UC.CONVERT(" + quoted(end_text(number, usual.unit)) + ";" +
                   quoted(usual.unit.empty() ? "1" : usual.unit) + ")";
        };
        return between(cell, end(range.low), end(range.high));
    };
    const std::string blank = "LEN(" + helpers.cell(value_column) + ")=0";
    helpers.count_unless(Helper::impossible, "OR(" + blank + ";" + inside(usual.possible) + ")");
    helpers.count_unless(Helper::unusual, "OR(" + blank + ";" + helpers.cell(Helper::impossible) + "=1;" +
                                              inside(usual.usual) + ")");
    helpers.keep(Helper::usual_words, range_words(usual.usual, usual, usual.unit));
    helpers.keep(Helper::possible_words, range_words(usual.possible, usual, usual.unit));
}

}  // namespace

void watch_text(CellWriter& writer, const Row& row, const std::string& text,
                const std::vector<std::string>& options, int at) {
    HelperRow helpers(writer, at);
    const std::string cell = helpers.cell(value_column);
    count_to_give(helpers, false);
    if (row.usual) {
        watch_range_of_text(helpers, *row.usual);
    } else {
        helpers.keep(Helper::possible_words, "one of the list is wanted");
    }
    if (!options.empty()) {
        Words any = {"LEN(" + cell + ")=0"};
        for (const std::string& option : options) any.push_back(cell + "=" + quoted(option));
        helpers.count_unless(Helper::not_listed, "OR(" + join(any, ";") + ")");
    }
    Entry entry;
    entry.text = text;
    if (!text.empty()) count_assumed(helpers, entry);
    helpers.put_mark();
    finish_row(writer, row, helpers, at);
}

namespace {

/// The conditions that an entry of an item must meet.
class EntryConditions {
public:
    /// The row's own unit is copied down with it, that of a whole column stays.
    EntryConditions(const HelperRow& helpers, const Entry& entry, int at) : entry_(entry) {
        cell_ = helpers.cell(entry.column);
        unit_ = entry.unit.empty()
                    ? quoted("1")
                    : "[." + cell_text(entry.unit_row, entry.unit_column, entry.unit_row != at) + "]&\"\"";
    }

    [[nodiscard]] const std::string& cell() const { return cell_; }
    [[nodiscard]] std::string given() const {
        const std::string length = "LEN(" + cell_ + ")";  // not 0 is true
        if (entry_.is_text || entry_.usual->or_zero) return length;
        return "AND(" + length + ">0;" + cell_ + "<>0)";
    }
    /// "g" or "i" while the entry is to give or impossible.
    [[nodiscard]] std::string state() const {
        std::string otherwise = "\"\"";
        if (!entry_.is_text) {
            const std::string fits = unless_zero(
                cell_, entry_.usual->any ? "ISNUMBER(" + cell_ + ")" : inside(entry_.usual->possible));
            const std::string condition =
                entry_.is_share ? fits : "AND(" + fits + ";" + shows_number(cell_) + ")";
            otherwise = unless(condition, "i", otherwise);
        }
        return unless(given(), "g", otherwise);
    }
    /// "u" while it is unusual.
    [[nodiscard]] std::string oddity() const {
        if (entry_.is_text || entry_.usual->any) return "\"\"";
        return unless(unless_zero(cell_, inside(entry_.usual->usual)), "u", "\"\"");
    }

private:
    [[nodiscard]] static std::string unless(const std::string& condition, const char* state,
                                            const std::string& otherwise) {
        return "IF(ISERROR(1/" + condition + ");" + quoted(state) + ";" + otherwise + ")";
    }
    [[nodiscard]] std::string inside(const Range& range) const {
        const auto end = [&](double number) {
            return "UNDERCROFT.UC.CONVERT(" + quoted(end_text(number, entry_.usual->unit)) + ";" + unit_ +
                   ")";
        };
        return between(cell_, end(range.low), end(range.high));
    }

    const Entry& entry_;
    std::string cell_;
    std::string unit_;
};

/// `Area 20 to 20000 m2, C 0.05 to 1`
std::string words_of(const std::vector<Entry>& entries, bool usual) {
    Words words;
    for (const Entry& entry : entries) {
        if (!entry.usual || entry.usual->any) continue;
        words.push_back(
            entry.title + " " +
            range_words(usual ? entry.usual->usual : entry.usual->possible, *entry.usual, entry.unit));
    }
    return words.empty() ? "numbers are wanted" : join(words, ", ");
}

}  // namespace

void watch_item(CellWriter& writer, const std::vector<Entry>& entries, int at) {
    HelperRow helpers(writer, at);
    if (entries.size() > static_cast<std::size_t>(most_entries))
        throw std::runtime_error("an item has more entries than are watched");
    Words filled;
    Words same;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const Entry& entry = entries[i];
        const EntryConditions conditions(helpers, entry, at);
        const int number = static_cast<int>(i);
        writer.put_formula(at, entry_state_column(writer.sheet(), number), "OpenCount", conditions.state());
        writer.put_formula(at, entry_oddity_column(writer.sheet(), number), "OpenCount", conditions.oddity());
        filled.push_back("LEN(" + conditions.cell() + ")");
        helpers.keep_template(entry, number);
        same.push_back(conditions.cell() + "=" + helpers.template_value(number));
        const bool own_unit = entry.unit_row == at;
        if (!entry.unit.empty() && own_unit)
            same.push_back(helpers.cell(entry.unit_column) + "&\"\"=" + helpers.template_unit(number));
    }
    const std::string any = join(filled, "+") + ">0";
    const auto some = [&](int first, const char* state) {
        const int last = first + static_cast<int>(entries.size()) - 1;
        return "COUNTIF([." + cell_text(at, first) + ":." + cell_text(at, last) + "];" + quoted(state) +
               ")>0";
    };
    const int states = entry_state_column(writer.sheet(), 0);
    helpers.count_unless(Helper::to_give, "NOT(AND(" + any + ";" + some(states, "g") + "))");
    helpers.count_unless(Helper::impossible, "NOT(" + some(states, "i") + ")");
    helpers.count_unless(Helper::unusual, "OR(" + helpers.cell(Helper::impossible) + "=1;NOT(" +
                                              some(entry_oddity_column(writer.sheet(), 0), "u") + "))");
    same.insert(same.begin(), any);
    helpers.put_mark();
    helpers.compute(Helper::assumed, "IF(ISERROR(1/" + is_untouched(helpers, same) + ");0;1)");
    helpers.keep(Helper::usual_words, words_of(entries, true));
    helpers.keep(Helper::possible_words, words_of(entries, false) + as_it_is);
    helpers.put_state();
    helpers.mark_when_assumed();
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const std::string state = helpers.cell(entry_state_column(writer.sheet(), static_cast<int>(i)));
        helpers.mark_when(
            entries[i].column,
            "OR(AND(" + helpers.cell(Helper::to_give) + "=1;" + state + "=\"g\");" + state + "=\"i\")",
            "Wrong");
        const std::string oddity = helpers.cell(entry_oddity_column(writer.sheet(), static_cast<int>(i)));
        helpers.mark_when(entries[i].column, oddity + "=\"u\"", "Unusual");
    }
}

}  // namespace undercroft::sheets
