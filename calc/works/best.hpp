/// \file best.hpp
/// The best few of what is offered one after the other.
#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

namespace undercroft::calc {

/// The best of what is offered by a key, the least first; of one key the first offered.
template <class Key, class Thing>
class Best {
public:
    Best(std::size_t most, double candidates) : most_(std::min(most, static_cast<std::size_t>(candidates))) {
        kept_.reserve(most_ + 1);
    }

    /// Whether something of that key would be kept: of one key, what comes later is not.
    [[nodiscard]] bool takes(const Key& key) const {
        return kept_.size() < most_ || (most_ > 0 && key < kept_.front().key);
    }
    void offer(const Key& key, const Thing& thing) {
        if (!takes(key)) return;
        kept_.push_back({key, ++offered_, thing});
        std::push_heap(kept_.begin(), kept_.end(), is_better);
        if (kept_.size() <= most_) return;
        std::pop_heap(kept_.begin(), kept_.end(), is_better);
        kept_.pop_back();
    }
    [[nodiscard]] std::vector<Thing> in_order() {
        std::sort(kept_.begin(), kept_.end(), is_better);
        std::vector<Thing> things;
        for (const Entry& entry : kept_) things.push_back(entry.thing);
        return things;
    }

private:
    struct Entry {
        Key key;
        std::size_t number;
        Thing thing;
    };
    static bool is_better(const Entry& a, const Entry& b) {
        return a.key != b.key ? a.key < b.key : a.number < b.number;
    }

    std::size_t most_;
    std::size_t offered_ = 0;
    std::vector<Entry> kept_;
};

}  // namespace undercroft::calc
