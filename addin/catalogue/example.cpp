#include "addin/catalogue/example.hpp"

namespace undercroft::addin {

std::string_view origin_text(Origin origin) {
    switch (origin) {
        case Origin::published:
            return "published";
        case Origin::from_memory:
            return "from memory";
        case Origin::mathematics:
            return "math";
        case Origin::common_practice:
            return "common practice";
    }
    return {};
}

}  // namespace undercroft::addin
