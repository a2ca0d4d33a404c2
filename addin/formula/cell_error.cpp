#include "addin/formula/cell_error.hpp"

namespace undercroft::addin {

namespace {

struct KnownError {
    int code;
    const char* shown;
    const char* meaning;
};

// Codes of LibreOffice 7.4, as its help lists them.
constexpr KnownError known[] = {
    {501, "Err:501", "a character in the formula is not valid"},
    {502, "Err:502", "an argument of a function is not valid"},
    {503, "#NUM!", "an argument is outside what the function can compute, or the result is too large"},
    {504, "Err:504",
     "an argument is of the wrong kind or missing, or a range that is given to a function holds an error"},
    {508, "Err:508", "a bracket is missing"},
    {509, "Err:509", "an operator is missing"},
    {510, "Err:510", "a value is missing"},
    {511, "Err:511", "an argument is missing"},
    {513, "Err:513", "a text or the formula is too long"},
    {518, "Err:518", "something in the formula is missing"},
    {519, "#VALUE!", "text stands where a number is wanted, or a range where one cell is wanted"},
    {522, "Err:522", "the formula rests on its own result"},
    {523, "Err:523", "a computation by repetition found no answer"},
    {524, "#REF!", "a row, column, sheet or file that the formula used is gone"},
    {525, "#NAME?",
     "a name or function is not known here: is it spelt right, and is its extension installed?"},
    {532, "#DIV/0!", "it divides by zero or by a blank cell"},
    {533, "Err:533", "an array in the formula holds arrays"},
    {539, "Err:539", "an array in the formula holds what it cannot hold"},
    {540, "Err:540", "it asks for content of another file, which is not allowed"},
    {32767, "#N/A", "there is no answer, as when a value is not in a table"},
};

const KnownError* find(int code) {
    for (const KnownError& error : known)
        if (error.code == code) return &error;
    return nullptr;
}

}  // namespace

std::string error_text(int code) {
    const KnownError* error = find(code);
    return error != nullptr ? error->shown : "Err:" + std::to_string(code);
}

std::string error_meaning(int code) {
    const KnownError* error = find(code);
    return error != nullptr ? error->meaning : "see Calc's help for the code";
}

}  // namespace undercroft::addin
