// One cut list of sheet for all faces of a bed.
#include "calc/works/cut_list.hpp"

#include "calc/works/excavation.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

const Faces all_faces{true, true, true};

/// Rolls of 50 m x 5 m with laps of 0.5 m, joined within a strip where a rest is worth it.
SheetRoll roll_of(double length, double width, double lap, double least_piece) {
    return {m(length), m(width), m(lap), m(least_piece)};
}

/// The covered area of a face: its panels less their laps.
double covered(const std::vector<Panel>& panels, double face, const SheetRoll& roll) {
    double area = 0;
    for (const Panel& panel : panels) {
        if (number(panel.face) != face) continue;
        const double wide = (panel.width - (number(panel.strip) > 1 ? roll.lap : m(0))).value();
        const double fresh = (panel.length - (panel.is_joined ? roll.lap : m(0))).value();
        area += wide * fresh;
    }
    return area;
}

/// No panel lies on another of its roll, nor beyond the roll's edges.
void require_apart(const std::vector<Panel>& panels, const SheetRoll& roll) {
    const double hair = 1e-6;
    for (std::size_t i = 0; i < panels.size(); ++i) {
        const Panel& a = panels[i];
        REQUIRE(a.along.value() >= 0);
        REQUIRE(a.across.value() >= 0);
        REQUIRE((a.along + a.length).value() <= roll.length.value() + hair);
        REQUIRE((a.across + a.width).value() <= roll.width.value() + hair);
        for (std::size_t j = i + 1; j < panels.size(); ++j) {
            const Panel& b = panels[j];
            if (a.roll != b.roll) continue;
            const bool apart = (a.along + a.length).value() <= b.along.value() + hair ||
                               (b.along + b.length).value() <= a.along.value() + hair ||
                               (a.across + a.width).value() <= b.across.value() + hair ||
                               (b.across + b.width).value() <= a.across.value() + hair;
            REQUIRE(apart);
        }
    }
}

}  // namespace

TEST_CASE("strips of one face, by hand") {
    // math: n = ceil((W - lap)/(roll width - lap)), k = ceil((L - lap)/(roll length - lap)).
    const SheetFaces face = {{m(46), m(16.4)}};
    const std::vector<Panel> four = cut_list(face, roll_of(50, 5, 0.5, 50));
    CHECK(four.size() == 4);
    CHECK(rolls_of(four) == count(4));
    CHECK_THAT(seams_of(four, face), is_near(m(138)));
    CHECK_THAT(four.back().width, is_near(m(16.4 - 3 * 4.5), 1e-12));
    // 13.5/4.5 is 3 exactly, not 4.
    const SheetFaces exact = {{m(46), m(14)}};
    const std::vector<Panel> three = cut_list(exact, roll_of(50, 5, 0.5, 50));
    CHECK(three.size() == 3);
    CHECK_THAT(seams_of(three, exact), is_near(m(92)));
    // Rolls of 30 m: two lengths a strip, and four joins across the strips.
    const std::vector<Panel> joined = cut_list(face, roll_of(30, 5, 0.5, 30));
    CHECK(joined.size() == 8);
    CHECK_THAT(seams_of(joined, face), is_near(m(138 + 3 * 5 + 2.9), 1e-12));
}

TEST_CASE("one list for all faces of a car park's bed needs fewer rolls than its faces one by one") {
    // 39.99 x 12.17 m, 1.14 m high, 1H:1V; rolls of 100 m x 4.5 m, laps of 0.45 m.
    const SheetFaces faces = wrap_faces(m(39.99), m(12.17), m(1.14), batter(1), all_faces, {m(0), m(0.45)});
    const SheetRoll roll = roll_of(100, 4.5, 0.45, 3);
    const std::vector<Panel> panels = cut_list(faces, roll);
    CHECK(rolls_of(panels) == count(4));
    // Base 2, walls 2, top 2: six.
    double one_by_one = 0;
    one_by_one += number(rolls(m(39.99), m(12.17), m(100), m(4.5), m(0.45), share(0)));
    one_by_one += number(rolls(m(42.27), m(14.45), m(100), m(4.5), m(0.45), share(0)));
    one_by_one += number(rolls(m(2 * (39.99 + 12.17) + 4 * 1.14), m(1.14 * std::sqrt(2) + 0.45), m(100),
                               m(4.5), m(0.45), share(0)));
    CHECK(one_by_one == 6);
    require_apart(panels, roll);
}

TEST_CASE("panels less their laps are the faces, wherever they are cut from") {
    Random random;
    for (int i = 0; i < 150; ++i) {
        SheetFaces faces;
        for (int n = random.whole(1, 6); n > 0; --n)
            faces.emplace_back(m(random.between(2, 90)), m(random.between(0.5, 25)));
        const double lap = random.between(0, 0.6);
        const double length = random.between(20, 120);
        const SheetRoll roll = roll_of(length, random.between(2, 7), lap, random.between(lap + 0.1, length));
        const std::vector<Panel> panels = cut_list(faces, roll);
        double face = 0;
        for (const auto& [along, across] : faces) {
            ++face;
            CAPTURE(i, face);
            REQUIRE(covered(panels, face, roll) == Approx((along * across).value()).epsilon(1e-9));
        }
        require_apart(panels, roll);
        double bought = 0;
        for (const auto& [number_of_roll, rest] : rests_of(panels, roll)) {
            ++bought;
            REQUIRE(rest >= m(0));
            REQUIRE(rest < roll.length);
        }
        REQUIRE(bought == number(rolls_of(panels)));
    }
}

TEST_CASE("one cut list needs no more rolls than the faces one by one") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        SheetFaces faces;
        double one_by_one = 0;
        const double lap = random.between(0.1, 0.6);
        const double length = random.between(20, 120);
        const double width = random.between(2, 7);
        for (int n = random.whole(2, 6); n > 0; --n) {
            const Length along = m(random.between(2, 90));
            const Length across = m(random.between(0.5, 25));
            faces.emplace_back(along, across);
            one_by_one += number(rolls(along, across, m(length), m(width), m(lap), share(0)));
        }
        CAPTURE(i);
        REQUIRE(number(rolls_of(cut_list(faces, roll_of(length, width, lap, lap + 0.001)))) <= one_by_one);
    }
}

TEST_CASE("faces of a bed are its base, four walls and top with their laps") {
    const SheetFaces faces = wrap_faces(m(30), m(12), m(1), batter(0.75), all_faces, {m(0.3), m(0.5)});
    REQUIRE(faces.size() == 6);
    CHECK(faces[0] == std::tuple(m(30), m(12)));
    CHECK_THAT(std::get<0>(faces[1]), is_near(m(31.8)));
    CHECK_THAT(std::get<1>(faces[1]), is_near(m(1.25 + 0.8)));
    CHECK_THAT(std::get<0>(faces[3]), is_near(m(13.8)));
    CHECK_THAT(std::get<0>(faces[5]), is_near(m(31.5)));
    CHECK_THAT(std::get<1>(faces[5]), is_near(m(13.5)));
    CHECK(wrap_faces(m(30), m(12), m(1), batter(0), {true, false, false}, {m(0.3), m(0.5)}).size() == 1);
    // The lap of walls and base: 2 (30 + 12) 0.3 m2 more than the faces and the lap at the top.
    CHECK_THAT(lapped_wrap_area(m(30), m(12), m(1), batter(0.75), all_faces, {m(0.3), m(0.5)}),
               is_near(wrap_area(m(30), m(12), m(1), batter(0.75), all_faces, m(0.5)) + m2(25.2)));
    CHECK(lapped_wrap_area(m(30), m(12), m(1), batter(0.75), {true, false, true}, {m(0.3), m(0)}) ==
          wrap_area(m(30), m(12), m(1), batter(0.75), {true, false, true}, m(0)));
    // Seams: along the base 84, up the corners 4 sqrt(1 + 2 0.75^2), along the top 90 m.
    CHECK_THAT(wrap_seams(m(30), m(12), m(1), batter(0.75), all_faces),
               is_near(m(84 + 90 + 4 * std::sqrt(2.125))));
    CHECK_THAT(wrap_seams(m(30), m(12), m(1), batter(0), {true, true, false}), is_near(m(88)));
    CHECK(wrap_seams(m(30), m(12), m(1), batter(0), {true, false, false}) == m(0));
}

TEST_CASE("sheet that covers nothing is refused") {
    const SheetFaces face = {{m(46), m(16.4)}};
    const auto with = [&](auto change) {
        SheetRoll roll = roll_of(50, 5, 0.5, 3);
        change(roll);
        return cut_list(face, roll);
    };
    CHECK_THROWS_MATCHES(with([](SheetRoll& r) { r.length = m(0); }), Refused, refuses_domain("roll length"));
    CHECK_THROWS_MATCHES(with([](SheetRoll& r) { r.width = m(0); }), Refused, refuses_domain("roll width"));
    CHECK_THROWS_MATCHES(with([](SheetRoll& r) { r.lap = m(-1); }), Refused, refuses_domain("lap"));
    CHECK_THROWS_MATCHES(with([](SheetRoll& r) { r.lap = m(5); }), Refused,
                         refuses_domain("less than the roll width"));
    CHECK_THROWS_MATCHES(with([](SheetRoll& r) { r.least_piece = m(0.5); }), Refused,
                         refuses_domain("a shorter one covers nothing"));
    CHECK_THROWS_MATCHES(with([](SheetRoll& r) { r.least_piece = m(51); }), Refused,
                         refuses_domain("at most the roll length"));
    CHECK_THROWS_MATCHES(cut_list({}, roll_of(50, 5, 0.5, 3)), Refused, refuses_domain("no face to cover"));
    CHECK_THROWS_MATCHES(cut_list({{m(0), m(1)}}, roll_of(50, 5, 0.5, 3)), Refused,
                         refuses_domain("length of a face"));
    CHECK_THROWS_MATCHES(cut_list({{m(1), m(0)}}, roll_of(50, 5, 0.5, 3)), Refused,
                         refuses_domain("width of a face"));
    CHECK_THROWS_MATCHES(cut_list({{m(1e5), m(1e4)}}, roll_of(50, 5, 0.5, 3)), Refused,
                         refuses_domain("more than 10000 panels"));
    CHECK_THROWS_MATCHES(wrap_faces(m(1), m(1), m(1), batter(0), {}, {m(0), m(0)}), Refused,
                         refuses_domain("at least one of base, walls, top"));
    CHECK_THROWS_MATCHES(wrap_faces(m(1), m(1), m(1), batter(0), all_faces, {m(-1), m(0)}), Refused,
                         refuses_domain("lap at base"));
    CHECK_THROWS_MATCHES(wrap_faces(m(0), m(1), m(1), batter(0), all_faces, {m(0), m(0)}), Refused,
                         refuses_domain("base length"));
    CHECK_THROWS_MATCHES(lapped_wrap_area(m(1), m(1), m(1), batter(0), all_faces, {m(0), m(-1)}), Refused,
                         refuses_domain("lap at top"));
}

}  // namespace undercroft::tests
