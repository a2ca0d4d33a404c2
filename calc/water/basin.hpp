/// \file basin.hpp
/// A bed, and the surface above it where its water may pond, as levels between which both storage and outflow
/// are straight.
#pragma once

#include <optional>
#include <vector>

#include "calc/water/pool.hpp"

namespace undercroft::calc {

/// One level of a basin.
struct BasinLevel {
    Length depth;
    Volume stored;
    Flow outflow;
};

/// Levels in rising order of depth; between the top of a bed and the surface above it nothing more is stored.
struct Basin {
    std::vector<BasinLevel> levels;

    /// The bed alone, or with what ponds on the surface.
    /// \param surface depth above the base of the bed and volume on the surface, its first row without
    /// volume.
    /// \throws Refused(domain) as Pool; and for a surface of fewer than two rows, that begins below the top
    /// of the storage or with a volume, whose depths or volumes do not rise, or to whose top the rating does
    /// not reach.
    Basin(const StorageTable& storage, const RatingTable& rating, const std::optional<StorageTable>& surface);

    [[nodiscard]] Length top() const { return levels.back().depth; }
    /// What stands below the lowest outlet and never leaves.
    [[nodiscard]] Volume dead_storage() const;
};

}  // namespace undercroft::calc
