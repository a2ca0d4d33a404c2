#include "addin/catalogue/water/outlets_slot.hpp"

#include <array>

#include "addin/catalogue/usual_water.hpp"

namespace undercroft::addin {

namespace {

using calc::OutletKind;

/// What a column is for one kind of outlet.
struct Meaning {
    Dimension dimension;
    Limits limits;

    template <class Q>
    static Meaning of(const Range& range) {
        const Dimension dimension = dimension_of<Q>();
        return {dimension, {range, dimension, false}};
    }
};

/// Of the columns size, coefficient and sides; none where the kind takes nothing there.
using Meanings = std::array<std::optional<Meaning>, 3>;

const Meanings& meanings_of(OutletKind kind) {
    static const Meanings orifice = {Meaning::of<Length>(usual::orifice_diameter),
                                     Meaning::of<Share>(usual::orifice_coefficient), std::nullopt};
    static const Meanings weir = {Meaning::of<Length>(usual::crest_length),
                                  Meaning::of<WeirCoefficient>(usual::weir_coefficient),
                                  Meaning::of<Count>(usual::end_contractions)};
    static const Meanings notch = {Meaning::of<Angle>(usual::notch_angle),
                                   Meaning::of<WeirCoefficient>(usual::notch_coefficient), std::nullopt};
    static const Meanings pump = {Meaning::of<Flow>(usual::outlet_flow), std::nullopt, std::nullopt};
    static const Meanings soakage = {Meaning::of<Area>(usual::soakage_area),
                                     Meaning::of<Speed>(usual::soakage_rate),
                                     Meaning::of<Length>(usual::soakage_perimeter)};
    static const Meanings rectangle = {Meaning::of<Length>(usual::opening_side),
                                       Meaning::of<Share>(usual::orifice_coefficient),
                                       Meaning::of<Length>(usual::opening_side)};
    static const Meanings contracted = {Meaning::of<Length>(usual::crest_length), std::nullopt,
                                        Meaning::of<Length>(usual::channel_width)};
    static const Meanings riser = {Meaning::of<Length>(usual::riser_diameter),
                                   Meaning::of<WeirCoefficient>(usual::weir_coefficient),
                                   Meaning::of<Share>(usual::orifice_coefficient)};
    switch (kind) {
        case OutletKind::orifice:
            return orifice;
        case OutletKind::weir:
            return weir;
        case OutletKind::notch:
            return notch;
        case OutletKind::pump:
            return pump;
        case OutletKind::soakage:
            return soakage;
        case OutletKind::rectangle:
            return rectangle;
        case OutletKind::contracted:
            return contracted;
        case OutletKind::riser:
            return riser;
    }
    refuse_value("an outlet of an unknown kind");
}

/// One row of a table of outlets.
class RowReader {
public:
    RowReader(const OpenTable& table, std::size_t row, const Terms& terms)
        : table_(table), row_(row), terms_(terms) {}

    calc::OutletTable::value_type read() {
        try {
            return read_columns();
        } catch (const Refused& refused) {
            throw at_place(refused, row_, table_.place(column_));
        }
    }

private:
    calc::OutletTable::value_type read_columns() {
        const auto kind = column<OutletKind>(0);
        const Meanings& meanings = meanings_of(kind);
        const auto level = column<Length>(1);
        const Quantity size = *quantity(2, meanings[0]);
        const auto coefficient = quantity(3, meanings[1]);
        const auto count = column<std::optional<Count>>(4);
        const auto sides = quantity(5, meanings[2]);
        return {kind, level, size, coefficient, count, sides};
    }
    template <class T>
    T column(std::size_t column) {
        column_ = column;
        return ColumnSlot<T>::read(table_, row_, column, terms_.of_column(column));
    }
    /// A quantity of another dimension than the kind's is left to calc, which says what the kind takes.
    std::optional<Quantity> quantity(std::size_t at, const std::optional<Meaning>& meaning) {
        const std::optional<Quantity> read =
            at == 2 ? std::optional(column<Quantity>(at)) : column<std::optional<Quantity>>(at);
        const bool is_checked =
            read && meaning && (read->form == Quantity::Form::bare || read->dimension == meaning->dimension);
        if (is_checked)
            (void)read_in(
                meaning->dimension, *read, table_.at(row_, at),
                {terms_.limits == nullptr ? nullptr : &meaning->limits, terms_.mixture, terms_.argument});
        return read;
    }

    const OpenTable& table_;
    std::size_t row_;
    const Terms& terms_;
    std::size_t column_ = 0;
};

}  // namespace

Outlets Slot<Outlets>::read(const Cell& cell, const Terms& terms) {
    using Rows = Slot<calc::OutletTable>;
    const OpenTable table = open_table(cell, Rows::least, Rows::most, Rows::units_beside());
    Outlets outlets;
    for (std::size_t r = table.first_row; r < table.end_row; ++r)
        if (!table.is_unused(r)) outlets.rows.push_back(RowReader(table, r, terms).read());
    if (outlets.rows.empty()) refuse_value("the table has no row of values");
    return outlets;
}

}  // namespace undercroft::addin
