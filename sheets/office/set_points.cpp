#include "sheets/office/set_points.hpp"

#include <algorithm>
#include <cstdio>
#include <stdexcept>

#include "units/one_line.hpp"

namespace undercroft::sheets {

namespace {

constexpr const char* corners[] = {"A", "B", "C", "D"};
constexpr int highest_table = 1000;

class PointReader {
public:
    explicit PointReader(const Document& document) : document_(document) {
        if (!document.has_name("pit_table_east"))
            throw std::runtime_error("has no points to set out: only the workbook of the whole job has them");
        read_.unit = shown(document.named("pit_table_east"));
    }

    /// A row of a table whose first row holds the units. \return whether there is one
    bool take(const std::string& table, int row, const std::string& name) {
        if (shown(document_.named(table + "_east", 0, row)).empty()) return false;
        read_.points.push_back({name, number(table + "_east", row, name), number(table + "_north", row, name),
                                number(table + "_level", row, name)});
        return true;
    }
    [[nodiscard]] double number(const std::string& key, int row, const std::string& name) const {
        const auto cell = document_.named(key, 0, row);
        if (cell->getError() != 0)
            throw std::runtime_error("the point " + name + " shows an error: " + shown(cell));
        return cell->getValue();
    }
    [[nodiscard]] const Document& document() const { return document_; }
    NamedPoints done() && { return std::move(read_); }

private:
    const Document& document_;
    NamedPoints read_;
};

void take_pit(PointReader& reader) {
    for (int corner = 0; corner < 8; ++corner)
        reader.take("pit_table", corner + 1,
                    std::string(corner < 4 ? "pit base " : "pit top ") + corners[corner % 4]);
}

void take_rows(PointReader& reader) {
    for (int i = 0; i < highest_table; ++i) {
        const std::string name = "row " + std::to_string(i / 2 + 1) + (i % 2 == 0 ? " start" : " end");
        if (i >= 2 * reader.number("bed_rows", 0, name)) return;
        if (!reader.take("row_table", i + 1, name)) return;
    }
}

void take_ports(PointReader& reader) {
    const int in_row = static_cast<int>(reader.number("row_ports", 0, "port 1"));
    const double all = reader.number("bed_ports", 0, "port 1");
    for (int i = 0; i < all && in_row > 0; ++i)
        reader.take("port_table", i + 1,
                    "row " + std::to_string(i / in_row + 1) + " port " + std::to_string(i % in_row + 1));
}

/// What a person called a point, as one field of a line.
std::string field(const std::string& name) {
    std::string one = on_one_line(name);
    std::replace_if(
        one.begin(), one.end(), [](char c) { return c == ',' || c == '"'; }, ' ');
    return harmless_in_table(one);
}

}  // namespace

NamedPoints set_points(const Document& document) {
    PointReader reader(document);
    take_pit(reader);
    take_rows(reader);
    take_ports(reader);
    for (int i = 0; i < document.rows_of("further_point_name"); ++i) {
        const std::string name = shown(document.named("further_point_name", 0, i));
        reader.take("further_point", i, name.empty() ? "point " + std::to_string(i + 1) : name);
    }
    return std::move(reader).done();
}

std::string points_as_csv(const NamedPoints& points) {
    std::string text = "point,east " + points.unit + ",north " + points.unit + ",level " + points.unit + "\n";
    for (const NamedPoint& point : points.points) {
        char numbers[120];
        std::snprintf(numbers, sizeof numbers, ",%.3f,%.3f,%.3f\n", point.east, point.north, point.level);
        text += field(point.name) + numbers;
    }
    return text;
}

}  // namespace undercroft::sheets
