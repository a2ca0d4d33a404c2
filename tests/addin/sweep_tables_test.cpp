// Every table argument of every function, spoilt cell by cell and row by row.
#include <limits>

#include "tests/addin/hostile.hpp"
#include "tests/addin/sweep.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace addin;

namespace {

using Item = OwnedGrid::Item;
using Rows = std::vector<std::vector<Item>>;

Rows rows_of(const Grid& grid) {
    Rows rows(grid.rows(), std::vector<Item>(grid.columns()));
    for (std::size_t r = 0; r < grid.rows(); ++r)
        for (std::size_t c = 0; c < grid.columns(); ++c) {
            const Scalar scalar = grid.at(r, c);
            if (const double* number = std::get_if<double>(&scalar)) rows[r][c] = *number;
            if (const auto* text = std::get_if<std::u16string_view>(&scalar))
                rows[r][c] = std::u16string(*text);
        }
    return rows;
}

bool is_unit_row(const std::vector<Item>& row) {
    return std::all_of(row.begin(), row.end(), [](const Item& item) {
        const auto* text = std::get_if<std::u16string>(&item);
        return text != nullptr &&
               (text->empty() || *text == u"1" || !(text->front() >= u'0' && text->front() <= u'9'));
    });
}

bool is_near(const ResultItem& a, const ResultItem& b) {
    const double* x = std::get_if<double>(&a);
    const double* y = std::get_if<double>(&b);
    if (x == nullptr || y == nullptr) return a == b;
    return std::abs(*x - *y) <= 1e-9 * std::max(std::abs(*x), std::abs(*y));
}
bool is_near(const Answer& a, const Answer& b) {
    const auto* x = std::get_if<ResultRows>(&a);
    const auto* y = std::get_if<ResultRows>(&b);
    if (x == nullptr || y == nullptr) {
        const double* left = std::get_if<double>(&a);
        const double* right = std::get_if<double>(&b);
        return left != nullptr && right != nullptr ? is_near(ResultItem(*left), ResultItem(*right)) : a == b;
    }
    return std::equal(x->begin(), x->end(), y->begin(), y->end(), [](const auto& left, const auto& right) {
        return std::equal(left.begin(), left.end(), right.begin(), right.end(),
                          [](const ResultItem& one, const ResultItem& other) { return is_near(one, other); });
    });
}

/// One table argument of one function, with a good table in it.
class Victim {
public:
    Victim(const Function& function, std::vector<Cell> cells, std::size_t argument, Rows rows)
        : function_(function),
          cells_(std::move(cells)),
          argument_(argument),
          rows_(std::move(rows)),
          first_(is_unit_row(rows_.front()) ? 1 : 0),
          figures_(function.parameters[argument].type.shape == Shape::figures),
          good_(*outcome(rows_).answer) {}

    int tried() const { return tried_; }

    void spoil_cells() {
        const std::size_t at_most = std::min(rows_.size(), first_ + 3);  // the rows beyond are read alike
        for (std::size_t r = first_; r < at_most; ++r) {
            const bool unused = !std::holds_alternative<double>(rows_[r].front()) && figures_;
            for (std::size_t c = 0; c < rows_[r].size() && !unused; ++c) {
                const std::string row = "row " + std::to_string(r + 1);
                const std::string place = figures_ ? row : row + ", column " + std::to_string(c + 1);
                for (const double bad :
                     {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(),
                      -std::numeric_limits<double>::infinity(), Hostile::error_cell()})
                    must_refuse("not a number", with(r, c, bad), place);
                for (const char16_t* bad : {u"5 furlong", u"5 gal", u"1,5", u"\u0665", u"5\u200F", u"#N/A"})
                    must_refuse("no text for it", with(r, c, Item(std::u16string(bad))), place);
                must_refuse("NUL", with(r, c, Item(std::u16string(u"5 m\0", 4))), place);
                must_refuse("a long text", with(r, c, Item(std::u16string(32768, u'5'))), place);
                for (const double odd : {0.0, -1.0, -1e308, 1e308, 5e-324, 1e16})
                    must_be_sound("odd number", with(r, c, odd));
                must_be_sound("blank", with(r, c, Item()));
                must_be_sound("a word", with(r, c, Item(std::u16string(u"ellipse"))));
                must_be_sound("a mass", with(r, c, Item(std::u16string(u"5 kg"))));
            }
        }
    }

    void spoil_rows() {
        Rows reversed = rows_;
        std::reverse(reversed.begin() + static_cast<std::ptrdiff_t>(first_), reversed.end());
        const Outcome backwards = must_be_sound("reversed", reversed);
        if (backwards.answer && rows_.size() - first_ > 1 && !function_.parameters[argument_].order_counts &&
            !is_near(*backwards.answer, good_))
            FAIL_CHECK("an unsorted table gives another answer in silence: " << function_.name);

        Rows doubled = rows_;
        doubled.insert(doubled.begin() + static_cast<std::ptrdiff_t>(first_), rows_[first_]);
        must_be_sound("first row twice", doubled);

        Rows longer = rows_;
        longer.insert(longer.end(), 3, std::vector<Item>(rows_.front().size()));
        const Outcome with_blanks = must_be_sound("blank rows behind", longer);
        if (!with_blanks.answer || !is_near(*with_blanks.answer, good_))
            FAIL_CHECK("blank rows behind change the answer: " << function_.name);

        Rows gap = rows_;
        gap.insert(gap.begin() + static_cast<std::ptrdiff_t>(first_) + 1,
                   std::vector<Item>(rows_.front().size()));
        must_be_sound("a gap", gap);

        Rows headed = rows_;
        headed.insert(headed.begin(),
                      std::vector<Item>(rows_.front().size(), Item(std::u16string(u"heading"))));
        must_refuse("a heading", headed, "");
        const Rows units(1, std::vector<Item>(rows_.front().size(), Item(std::u16string(u"m"))));
        CHECK(must_be_sound("unit row only", units).refused);
        must_be_sound("one row",
                      Rows(rows_.begin(), rows_.begin() + static_cast<std::ptrdiff_t>(first_) + 1));
        CHECK(must_be_sound("all blank", Rows(5, std::vector<Item>(rows_.front().size()))).refused);
    }

    void spoil_columns() {
        Rows ragged = rows_;
        ragged.back().pop_back();
        must_be_sound("ragged", ragged);
        Rows narrow = rows_;
        for (auto& row : narrow) row.pop_back();
        must_be_sound("a column less", narrow);
        Rows wide = rows_;
        for (auto& row : wide) row.emplace_back(1.0);
        must_be_sound("a column more", wide);
        if (first_ == 0) return;
        for (std::size_t c = 0; c < rows_.front().size(); ++c)
            for (const char16_t* unit : {u"furlong", u"gal", u"m\u200F", u"\uFF4D", u"m/s/s"})
                must_refuse("a unit", with(0, c, Item(std::u16string(unit))),
                            figures_ ? "row 1" : "row 1, column " + std::to_string(c + 1));
    }

private:
    Rows with(std::size_t row, std::size_t column, Item item) const {
        Rows rows = rows_;
        rows[row][column] = std::move(item);
        return rows;
    }

    Outcome outcome(const Rows& rows) {
        ++tried_;
        const OwnedGrid grid{rows};
        cells_[argument_] = static_cast<const Grid*>(&grid);
        return outcome_of(function_, cells_);
    }

    Outcome must_be_sound(const std::string& what, const Rows& rows) {
        Outcome made = outcome(rows);
        CAPTURE(function_.name, function_.parameters[argument_].name, what, made.sentence());
        if (!made.other.empty()) FAIL_CHECK("an exception that is no refusal: " << made.other);
        if (made.answer && !is_sound(*made.answer)) FAIL_CHECK("a number that is not finite");
        if (made.refused && made.sentence().size() < 14) FAIL_CHECK("no sentence");
        if (made.sentence().find("nan ") != std::string::npos && made.refused->cause() != Cause::value)
            FAIL_CHECK("what is no number was computed with");
        if (made.seconds > 2 * patience && outcome(rows).seconds > 2 * patience) FAIL_CHECK("slow");
        return made;
    }

    void must_refuse(const std::string& what, const Rows& rows, const std::string& place) {
        const Outcome made = must_be_sound(what, rows);
        CAPTURE(function_.name, function_.parameters[argument_].name, what, place, made.sentence());
        if (!made.refused || made.refused->cause() != Cause::value) {
            FAIL_CHECK("not refused as no value");
            return;
        }
        if (!made.sentence().starts_with(function_.parameters[argument_].name + ": "))
            FAIL_CHECK("the argument is not named");
        if (made.sentence().find(place) == std::string::npos) FAIL_CHECK("the place is not named");
    }

    const Function& function_;
    std::vector<Cell> cells_;
    std::size_t argument_;
    Rows rows_;
    std::size_t first_;
    bool figures_;  ///< rows of number and unit, or one column: a place is its row
    int tried_ = 0;
    Answer good_;
};

}  // namespace

TEST_CASE("a spoilt table ends in a sound answer or a refusal that names the place", "[sweep]") {
    long tried = 0;
    int tables = 0;
    for (const Function& function : all_functions()) {
        if (function.reads_cell()) continue;
        for (const Arguments& good : good_arguments().at(function.name))
            for (std::size_t i = 0; i < function.parameters.size(); ++i) {
                const std::vector<Cell> cells = cells_of(good);
                const Grid* const* grid = std::get_if<const Grid*>(&cells[i]);
                if (grid == nullptr) continue;
                // Of a list of things only the figure asked for is read: own_sheets_test.cpp. What is pasted
                // is read as it is: its texts may be any.
                const Shape shape = function.parameters[i].type.shape;
                if (shape == Shape::things || shape == Shape::pasted) continue;
                Victim victim(function, cells, i, rows_of(**grid));
                victim.spoil_cells();
                victim.spoil_rows();
                victim.spoil_columns();
                tried += victim.tried();
                ++tables;
            }
    }
    WARN(tried << " calls with spoilt tables");
    CHECK(tables > 40);
    CHECK(tried > 5000);
}

}  // namespace undercroft::tests
