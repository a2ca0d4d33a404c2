#include "sheets/builder/dual.hpp"

#include "sheets/builder/lines.hpp"

namespace undercroft::sheets {

DualText dual(const std::string& field) {
    bool quoted = false;
    for (std::size_t i = 0; i + 1 < field.size(); ++i) {
        if (field[i] == '"') quoted = !quoted;
        if (!quoted && field[i] == '/' && field[i + 1] == '/')
            return {trimmed(field.substr(0, i)), trimmed(field.substr(i + 2))};
    }
    return {field, field};
}

}  // namespace undercroft::sheets
