/// \file pool.hpp
/// A bed as its water sees it: what is stored and what flows out at every depth.
#pragma once

#include <vector>

#include "calc/interpolate.hpp"
#include "calc/require.hpp"
#include "calc/water/rating.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Rows of depth and volume stored, the volume straight between them.
struct StorageTable {
    Table<Length, Volume> rows;
};

/// A storage table and a rating that were checked, on all depths of both, so that between two of these
/// depths both are straight.
struct Pool {
    std::vector<Length> depth;
    std::vector<Volume> stored;
    std::vector<Flow> outflow;

    /// \throws Refused(domain) for fewer than two rows, a depth that is not finite, depths or volumes that do
    /// not rise from row to row, a volume or flow below 0, or a rating that does not reach from the lowest to
    /// the highest depth of the storage.
    Pool(const StorageTable& storage, const RatingTable& rating);

    [[nodiscard]] Length bottom() const { return depth.front(); }
    [[nodiscard]] Length top() const { return depth.back(); }

    /// The depth itself. \throws Refused(domain) when it is not within the storage table.
    [[nodiscard]] Length inside(const char* name, Length at) const;

    /// Where in `depth` a depth stands: the index below it, less than the last, and the share of the way
    /// to the next.
    [[nodiscard]] std::pair<std::size_t, double> place_of(Length at) const;
    [[nodiscard]] Volume stored_at(Length at) const;

    /// Adds a depth between those there are; nothing changes if it is no depth of the pool.
    void insert(Length at);

    /// What stands below the lowest outlet and never leaves.
    [[nodiscard]] Volume dead_storage() const;
};

}  // namespace undercroft::calc
