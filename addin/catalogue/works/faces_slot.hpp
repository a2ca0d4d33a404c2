/// \file faces_slot.hpp
/// The faces of a bed that a sheet covers, as words in a cell.
#pragma once

#include "addin/catalogue/slot.hpp"
#include "calc/works/sheet_goods.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

/// Any of base, walls, top.
template <>
struct Slot<calc::Faces> {
    static calc::Faces read(const Cell& cell, const Terms&) {
        const std::string text = lower_case(read_text(cell, [] { return kind_text(type()); }));
        calc::Faces faces;
        std::size_t start = 0;
        while (start < text.size()) {
            const std::size_t end = std::min(text.find_first_of(" ,;+", start), text.size());
            const std::string word = text.substr(start, end - start);
            if (word == "base")
                faces.base = true;
            else if (word == "walls")
                faces.walls = true;
            else if (word == "top")
                faces.top = true;
            else if (!word.empty())
                refuse_choice(word, "a face", "one or more of base, walls, top");
            start = end + 1;
        }
        return faces;
    }
    static ValueType type() {
        return {.shape = Shape::words, .list = "base, walls, top", .words = {"base", "walls", "top"}};
    }
    static Reading reading(const calc::Faces& faces) {
        return {
            std::string(faces.base ? "base " : "") + (faces.walls ? "walls " : "") + (faces.top ? "top" : ""),
            {}};
    }
};

}  // namespace undercroft::addin
