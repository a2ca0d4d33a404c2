#include "calc/works/cut_list.hpp"

#include <algorithm>
#include <optional>

namespace undercroft::calc {

namespace {

void require_roll(const SheetRoll& roll) {
    require_positive("roll length", roll.length);
    require_positive("roll width", roll.width);
    require_not_negative("lap", roll.lap);
    require(roll.lap < roll.width, shown("lap", roll.lap), " must be less than the roll width (",
            amount(roll.width), ")");
    require(roll.lap < roll.length, shown("lap", roll.lap), " must be less than the roll length (",
            amount(roll.length), ")");
    require(roll.least_piece > roll.lap, shown("least piece", roll.least_piece), " must be longer than the ",
            shown("lap", roll.lap), ": a shorter one covers nothing");
    require(roll.least_piece <= roll.length * (1 + limit_tolerance), shown("least piece", roll.least_piece),
            " must be at most the roll length (", amount(roll.length), ")");
}

struct Strip {
    double face;
    double number;
    Length length;
    Length width;
};

double strips_across(Length width, const SheetRoll& roll) {
    return std::max(1.0, whole_up((width - roll.lap) / (roll.width - roll.lap)));
}

std::vector<Strip> strips_of(const SheetFaces& faces, const SheetRoll& roll) {
    require(!faces.empty(), "there is no face to cover");
    std::vector<Strip> strips;
    double face = 0;
    for (const auto& [length, width] : faces) {
        ++face;
        require_positive("length of a face", length);
        require_positive("width of a face", width);
        const double n = strips_across(width, roll);
        require(
            static_cast<double>(strips.size()) + n * (1 + static_cast<double>(length / roll.length)) <= 1e4,
            "more than 10000 panels: check the units of the faces and of the roll");
        const Length pitch = roll.width - roll.lap;
        for (double i = 1; i < n; ++i) strips.push_back({face, i, length, roll.width});
        strips.push_back({face, n, length, width - (n - 1) * pitch});
    }
    // The longest first, and of one length the widest: narrow ones find room beside them.
    std::stable_sort(strips.begin(), strips.end(), [](const Strip& a, const Strip& b) {
        return a.length != b.length ? a.length > b.length : a.width > b.width;
    });
    return strips;
}

/// The rolls being cut up, and what is left of them.
class Cutter {
public:
    explicit Cutter(const SheetRoll& roll) : roll_(roll), hair_(whole_tolerance * roll.length) {}

    void cut(const Strip& strip) {
        if (cut_beside(strip)) return;
        Length to_cover = strip.length;
        bool joined = false;
        while (to_cover > hair_) {
            const Length needed = joined ? to_cover + roll_.lap : to_cover;
            const std::size_t from = roll_for(needed);
            const Length piece = std::min(needed, rests_[from]);
            take(strip, from, piece, joined);
            to_cover -= joined ? piece - roll_.lap : piece;
            joined = true;
        }
    }

    [[nodiscard]] std::vector<Panel> panels() const { return panels_; }

private:
    /// Width that is left beside a panel, to the edge of the roll.
    struct Offcut {
        std::size_t panel;
        Length width;
    };

    bool cut_beside(const Strip& strip) {
        const auto fits = [&](const Offcut& offcut) {
            return offcut.width >= strip.width - hair_ &&
                   panels_[offcut.panel].length >= strip.length - hair_;
        };
        const auto offcut = std::find_if(offcuts_.begin(), offcuts_.end(), fits);
        if (offcut == offcuts_.end()) return false;
        const Panel& beside = panels_[offcut->panel];
        panels_.push_back({count(strip.face), count(strip.number), strip.length, strip.width, false,
                           beside.roll, beside.along, roll_.width - offcut->width});
        offcut->width -= strip.width;
        return true;
    }

    /// The shortest rest that is long enough; else the longest one that is worth joining; else a new roll.
    std::size_t roll_for(Length needed) {
        std::optional<std::size_t> enough;
        std::optional<std::size_t> longest;
        for (std::size_t i = 0; i < rests_.size(); ++i) {
            if (rests_[i] >= needed - hair_ && (!enough || rests_[i] < rests_[*enough])) enough = i;
            if (rests_[i] >= roll_.least_piece && (!longest || rests_[i] > rests_[*longest])) longest = i;
        }
        if (enough) return *enough;
        if (longest) return *longest;
        rests_.push_back(roll_.length);
        return rests_.size() - 1;
    }

    void take(const Strip& strip, std::size_t from, Length piece, bool joined) {
        panels_.push_back({count(strip.face), count(strip.number), piece, strip.width, joined,
                           count(static_cast<double>(from) + 1), roll_.length - rests_[from], zero});
        rests_[from] -= piece;
        offcuts_.push_back({panels_.size() - 1, roll_.width - strip.width});
    }

    const SheetRoll& roll_;
    Length hair_;
    std::vector<Length> rests_;
    std::vector<Offcut> offcuts_;
    std::vector<Panel> panels_;
};

}  // namespace

std::vector<Panel> cut_list(const SheetFaces& faces, const SheetRoll& roll) {
    require_roll(roll);
    Cutter cutter(roll);
    for (const Strip& strip : strips_of(faces, roll)) cutter.cut(strip);
    return cutter.panels();
}

Count rolls_of(const std::vector<Panel>& panels) {
    Count rolls = count(0);
    for (const Panel& panel : panels) rolls = std::max(rolls, panel.roll);
    return rolls;
}

Length seams_of(const std::vector<Panel>& panels, const SheetFaces& faces) {
    Length seams = zero;
    for (const Panel& panel : panels) {
        if (panel.is_joined)
            seams += panel.width;
        else if (number(panel.strip) > 1)
            seams += std::get<0>(faces.at(static_cast<std::size_t>(number(panel.face)) - 1));
    }
    return seams;
}

Table<Count, Length> rests_of(const std::vector<Panel>& panels, const SheetRoll& roll) {
    Table<Count, Length> rests;
    for (double i = 1; i <= number(rolls_of(panels)); ++i) rests.emplace_back(count(i), roll.length);
    for (const Panel& panel : panels) {
        Length& rest = std::get<1>(rests[static_cast<std::size_t>(number(panel.roll)) - 1]);
        rest = std::min(rest, roll.length - panel.along - panel.length);
    }
    for (auto& [roll_number, rest] : rests) rest = std::max<Length>(rest, zero);
    return rests;
}

}  // namespace undercroft::calc
