// Checks: the verdict, what was demanded and what there is as numbers, and a sentence that says so.
#include <algorithm>

#include "sheets/builder/fill.hpp"
#include "sheets/builder/formula_text.hpp"
#include "sheets/builder/helper_columns.hpp"

namespace undercroft::sheets {

SheetCell& put_verdict(CellWriter& writer, int at, int column, const std::string& stored) {
    writer.grid().checks.emplace_back(at, column);
    return writer.put_formula(at, column, "Verdict", stored);
}

namespace {

using Sense = rows::Comparison::Sense;

/// How a comparison is said: `0.70 m < 0.75 m: short by 0.05 m`.
struct Wording {
    const char* symbol;      ///< between the two symbols of the row
    const char* holds;       ///< between what there is and what is wanted
    const char* fails;       ///< the same where it fails
    const char* difference;  ///< before the difference where it fails
};

Wording wording_of(Sense sense) {
    switch (sense) {
        case Sense::at_least:
            return {"≥", " ≥ ", " < ", ": short by "};
        case Sense::at_most:
            return {"≤", " ≤ ", " > ", ": over by "};
        case Sense::above:
            return {">", " > ", " ≤ ", ": short by "};
        case Sense::below:
            return {"<", " < ", " ≥ ", ": over by "};
    }
    return {};
}

/// The formula that is 1 where the comparison holds.
std::string holds(const rows::Comparison& comparison) {
    const std::string both = "(" + comparison.left + ";" + comparison.right + ")";
    switch (comparison.sense) {
        case Sense::at_least:
            return "UNDERCROFT.UC.ATLEAST" + both;
        case Sense::at_most:
            return "UNDERCROFT.UC.ATMOST" + both;
        case Sense::above:
            return "NOT(UNDERCROFT.UC.ATMOST" + both + ")*1";
        case Sense::below:
            return "NOT(UNDERCROFT.UC.ATLEAST" + both + ")*1";
    }
    return {};
}

/// Where the check counts, else a word.
std::string where_it_counts(const CellWriter& writer, const rows::Comparison& comparison,
                            const std::string& formula, const std::string& otherwise) {
    if (comparison.condition.empty()) return formula;
    return "IF(" + writer.meaning(comparison.condition + ".value") + "=1;" + formula + ";" +
           quoted(otherwise) + ")";
}

std::string verdict_of(const CellWriter& writer, const rows::Comparison& comparison, const Place& limit) {
    std::string verdict = holds(comparison);
    if (comparison.waits) verdict = "IF(" + verdict + "=1;1;\"open\")";
    if (limit.is_typed() && !limit.takes_zero())
        verdict = "IF(" + writer.meaning(comparison.right + ".value") + "=0;\"open: limit not given\";" +
                  verdict + ")";
    return where_it_counts(writer, comparison, verdict, "not counted");
}

/// Numbers and words of one check, to the right of the page.
class CheckRow {
public:
    CheckRow(CellWriter& writer, int at) : writer_(writer), at_(at) {}

    [[nodiscard]] std::string cell(Helper helper) const {
        return "[." + cell_text(at_, helper_column(writer_.sheet(), helper)) + "]";
    }
    void put(Helper helper, const char* style, const std::string& formula) {
        writer_.put_formula(at_, helper_column(writer_.sheet(), helper), style, formula);
    }
    void keep(Helper helper, const std::string& text) {
        writer_.put_text(at_, helper_column(writer_.sheet(), helper), "Kept", text);
    }

    /// Demand and capacity in the unit of the limit, and their ratio; a level has none.
    /// \param ruled whether the verdict is a formula's, which may say by itself that it does not count
    void put_numbers(const rows::Comparison& comparison, bool levels, bool ruled = false) {
        const bool limit_is_demand = comparison.sense == Sense::at_least || comparison.sense == Sense::above;
        const std::string unit_cell = writer_.meaning(comparison.right + ".unit");
        const std::string in_unit = ";" + unit_cell + "&\"\")";
        const auto number = [&](const std::string& key) {
            const Place& place = *writer_.layout().find(key);
            std::string shown = "UNDERCROFT.UC.CONVERT(" + key + in_unit;
            if (key == comparison.right && place.is_typed() && !place.takes_zero())  // not given
                shown = "IF(" + writer_.meaning(key + ".value") + "=0;\"-\";" + shown + ")";
            if (ruled)
                shown = "IF([." + cell_text(at_, value_column) + "]=\"not counted\";\"-\";" + shown + ")";
            return "IFERROR(" + where_it_counts(writer_, comparison, shown, "-") + ";\"-\")";
        };
        put(Helper::check_unit, "UnitLink", "IF(" + unit_cell + "&\"\"=\"1\";\"\";\" \"&" + unit_cell + ")");
        put(Helper::demand, "Number", number(limit_is_demand ? comparison.right : comparison.left));
        put(Helper::capacity, "Number", number(limit_is_demand ? comparison.left : comparison.right));
        const std::string demand = cell(Helper::demand);
        const std::string capacity = cell(Helper::capacity);
        constexpr int level_decimals = 2;
        writer_.put_number(at_, helper_column(writer_.sheet(), Helper::kept_number), "Kept",
                           levels ? level_decimals : 0);
        const std::string both = "AND(ISNUMBER(" + demand + ");ISNUMBER(" + capacity + "))";
        put(Helper::ratio, "Number",
            "IF(" + both + ";IF(OR(" + cell(Helper::kept_number) + "=2;" + capacity + "=0);\"-\";" + demand +
                "/" + capacity + ");\"-\")");
        // So many that the difference shows, and both have two digits; whole numbers need none.
        put(Helper::decimals, "OpenCount",
            "IF(" + both + ";MAX(" + cell(Helper::kept_number) + ";IF(INT(" + demand + ")+INT(" + capacity +
                ")=" + demand + "+" + capacity + ";0;MAX(IFERROR(1-INT(LOG10(2*ABS(ROUND(" + demand + "-" +
                capacity + ";9))));0);IFERROR(MIN(2;1-INT(LOG10(MIN(ABS(" + demand + ");ABS(" + capacity +
                ")))));0))));0)");
    }

    /// What there is against what is wanted, or why the check is open, before the note.
    void put_sentence(const rows::Comparison& comparison, const std::string& other_words = {}) {
        const Wording words = wording_of(comparison.sense);
        keep(Helper::least_text, words.holds);
        keep(Helper::most_text, words.fails);
        keep(Helper::usual_words, words.difference);
        const std::string unit = cell(Helper::check_unit);
        const auto shown = [&](const std::string& number) {
            return "FIXED(" + number + ";" + cell(Helper::decimals) + ";TRUE())&" + unit;
        };
        const bool limit_is_demand = comparison.sense == Sense::at_least || comparison.sense == Sense::above;
        const std::string there = cell(limit_is_demand ? Helper::capacity : Helper::demand);
        const std::string wanted = cell(limit_is_demand ? Helper::demand : Helper::capacity);
        const std::string difference = "ABS(" + there + "-" + wanted + ")";
        const std::string verdict = "[." + cell_text(at_, value_column) + "]";
        const std::string passes = verdict + "=1";
        put(Helper::state, "OpenCount",
            "IF(AND(ISNUMBER(" + there + ");ISNUMBER(" + wanted + ");NOT(ISERROR(" + verdict + ")));" +
                shown(there) + "&IF(" + passes + ";" + cell(Helper::least_text) + ";" +
                cell(Helper::most_text) + ")&" + shown(wanted) + "&IF(" + passes + ";\"\";" +
                cell(Helper::usual_words) + "&" + shown(difference) + ");" +
                (other_words.empty() ? otherwise(other_words) : cell(Helper::check_words) + "&\"\"") + ")");
        if (!other_words.empty()) put(Helper::check_words, "OpenCount", otherwise(other_words));
        put_note();
    }

    /// The same where there are no two numbers: words, or why the check is open.
    void put_words(const std::string& words) {
        put(Helper::state, "OpenCount", otherwise(words));
        put_note();
    }

private:
    [[nodiscard]] std::string otherwise(const std::string& words) const {
        const std::string verdict = "[." + cell_text(at_, value_column) + "]";
        const std::string open = "IF(ISTEXT(" + verdict + ");" + verdict + ";";
        if (words.empty()) return open + "\"\")";
        return "IF(ISERROR(" + verdict + ");\"\";" + open + "IFERROR(" + words + ";\"\")))";
    }

    void put_note() {
        const std::string note = cell(Helper::kept_note);
        writer_
            .put_formula(at_, note_column, "Note",
                         cell(Helper::state) + "&IF(LEN(" + note + ")>0;\"; \"&" + note + ";\"\")")
            .columns = writer_.note_columns();
    }

    CellWriter& writer_;
    int at_;
};

/// The two symbols of a comparison. \return the place of its limit.
const Place& put_symbols(CellWriter& writer, const Row& row, const rows::Comparison& comparison, int at) {
    const Place& left = writer.place_of(row.line, comparison.left);
    const Place& right = writer.place_of(row.line, comparison.right);
    if (!left.is_pair || !right.is_pair) writer.mistake(row.line, "a check compares two numbers with units");
    if (!comparison.condition.empty()) (void)writer.place_of(row.line, comparison.condition);
    if (!left.symbol.empty() && !right.symbol.empty())
        writer.put_text(at, symbol_column, "Symbol",
                        left.symbol + " " + wording_of(comparison.sense).symbol + " " + right.symbol);
    return right;
}

/// As high as the note asks for with what is said before it.
void leave_room(CellWriter& writer, const Row& row, int at) {
    const std::string room_for_values = "123.4 m3 < 234.5 m3: short by 111.1 m3";
    writer.set_height(
        at, lines_of_text(row.description, symbol_column - description_column),
        lines_of_text(room_for_values + "; " + row.note, writer.note_columns(), small_pt));
}

void fill_comparison(CellWriter& writer, const Row& row, const rows::Comparison& comparison, int at) {
    const Place& limit = put_symbols(writer, row, comparison, at);
    put_verdict(writer, at, value_column, verdict_of(writer, comparison, limit)).columns = 2;
    CheckRow numbers(writer, at);
    numbers.put_numbers(comparison, comparison.right.ends_with("_level"));
    if (!row.note.empty()) numbers.keep(Helper::kept_note, row.note);
    numbers.put_sentence(comparison);
    leave_room(writer, row, at);
}

void fill_ruling(CellWriter& writer, const Row& row, const rows::Ruling& ruling, int at) {
    put_verdict(writer, at, value_column, writer.stored(row.line, ruling.formula)).columns = 2;
    if (!ruling.numbers && ruling.words.empty()) return;
    CheckRow numbers(writer, at);
    if (!row.note.empty()) numbers.keep(Helper::kept_note, row.note);
    const std::string words = ruling.words.empty() ? "" : writer.stored(row.line, ruling.words);
    if (ruling.numbers) {
        (void)put_symbols(writer, row, *ruling.numbers, at);
        numbers.put_numbers(*ruling.numbers, ruling.numbers->right.ends_with("_level"), true);
        numbers.put_sentence(*ruling.numbers, words);
    } else {
        numbers.put_words(words);
    }
    leave_room(writer, row, at);
}

}  // namespace

void fill_check(CellWriter& writer, const Row& row, const rows::Check& check, int at) {
    writer.put_common(row, at, true);
    std::visit(
        Overloaded{[&](const rows::Comparison& comparison) { fill_comparison(writer, row, comparison, at); },
                   [&](const rows::Ruling& ruling) { fill_ruling(writer, row, ruling, at); }},
        check.demand.in(writer.system()));
}

}  // namespace undercroft::sheets
