# Prints one mutant a line for a C++ file: number of the line, tab, what is changed, tab, the changed line.
# Left alone: comments, includes, sentences, template arguments, declarations without an expression.
# With -v kind=program also what decides rather than computes: conditions, early returns, words that are compared.

# The code of a line with its texts and comments blanked, so that places stay the same.
function blanked(line,    out, i, c, inside) {
    out = ""
    inside = 0
    for (i = 1; i <= length(line); ++i) {
        c = substr(line, i, 1)
        if (!inside && substr(line, i, 2) == "//") {
            while (i++ <= length(line)) out = out " "
            break
        }
        if (c == "\"" && substr(line, i - 1, 1) != "\\" && substr(line, i - 1, 1) != "'") inside = !inside
        out = out (inside || c == "\"" ? " " : c)
    }
    return out
}

function mutant(at, len, into, what) {
    print NR "\t" what "\t" substr($0, 1, at - 1) into substr($0, at + len)
}

function each_of(code, token, into, what,    from, at) {
    from = 1
    while ((at = index(substr(code, from), token)) > 0) {
        mutant(from + at - 1, length(token), into, what)
        from += at - 1 + length(token)
    }
}

# Each condition of an if turned round, as far as it stands on one line.
function each_condition(code,    from, at, i, depth, c) {
    from = 1
    while ((at = index(substr(code, from), "if (")) > 0) {
        at += from - 1
        depth = 0
        for (i = at + 3; i <= length(code); ++i) {
            c = substr(code, i, 1)
            if (c == "(") ++depth
            if (c == ")" && --depth == 0) break
        }
        if (depth == 0 && substr(code, at, i - at) !~ /;/)
            mutant(at, i - at + 1, "if (!(" substr($0, at + 4, i - at - 4) "))", "condition")
        from = at + 4
    }
}

# Where a comment begins on the line; beyond its end where there is none.
function comment_at(line,    i, inside) {
    for (i = 1; i <= length(line); ++i) {
        if (substr(line, i, 1) == "\"" && substr(line, i - 1, 1) != "\\") inside = !inside
        if (!inside && substr(line, i, 2) == "//") return i
    }
    return length(line) + 1
}

# Each text that is one word, so that nothing is equal to it.
function each_word(code,    rest, offset, at) {
    rest = $0
    offset = 0
    while (match(rest, /"[A-Za-z0-9_.#:<>=&~!%*\/^+-]+"/)) {
        at = offset + RSTART
        if (substr(code, at, RLENGTH) ~ /^ +$/ && at < comment_at($0)) mutant(at, RLENGTH, "\"\\x01\"", "word")
        offset += RSTART + RLENGTH - 1
        rest = substr(rest, RSTART + RLENGTH)
    }
}

/^ *#/ || /^ *\/\// || /^ *\*/ || /^ *$/ || /^namespace|^}|^template|^ *using / || /static_assert/ { next }

{
    code = blanked($0)
    each_of(code, " + ", " - ", "sign")
    each_of(code, " - ", " + ", "sign")
    each_of(code, " += ", " -= ", "sign")
    each_of(code, " -= ", " += ", "sign")
    each_of(code, " * ", " / ", "factor")
    each_of(code, " / ", " * ", "factor")
    each_of(code, " < ", " > ", "bound")
    each_of(code, " > ", " < ", "bound")
    each_of(code, " <= ", " > ", "bound")
    each_of(code, " >= ", " < ", "bound")
    each_of(code, " == ", " != ", "bound")
    each_of(code, " != ", " == ", "bound")
    each_of(code, " && ", " || ", "bound")
    each_of(code, " || ", " && ", "bound")
    each_of(code, "std::min(", "std::max(", "bound")
    each_of(code, "std::max(", "std::min(", "bound")
    each_of(code, "whole_up(", "whole_down(", "bound")
    each_of(code, "whole_down(", "whole_up(", "bound")
    each_of(code, "require_positive(", "(void)std::tuple(", "bound")
    each_of(code, "require_not_negative(", "(void)std::tuple(", "bound")
    each_of(code, "return -", "return ", "sign")
    each_of(code, "std::sin(", "std::cos(", "factor")
    each_of(code, "std::cos(", "std::sin(", "factor")
    each_of(code, "std::sqrt(", "std::cbrt(", "factor")
    # A factor: each number but those in subscripts, fractions of template arguments and from_value(0).
    rest = code
    offset = 0
    while (match(rest, /[0-9]+\.?[0-9]*(e-?[0-9]+)?/)) {
        at = offset + RSTART
        number = substr(rest, RSTART, RLENGTH)
        before = substr(code, at - 1, 1)
        if (before !~ /[A-Za-z0-9_.<\[]/ && code !~ /static_rational|iterations|tolerance<|get</ && number + 0 != 0 && number !~ /e-/) {  # a tolerance is no factor
            if (number ~ /[.e]/)
                mutant(at, length(number), "(" number " * 1.1)", "factor")
            else
                mutant(at, length(number), "(" number " + 1)", "factor")
        }
        offset += RSTART + RLENGTH - 1
        rest = substr(rest, RSTART + RLENGTH)
    }
    if (kind != "program") next
    each_condition(code)
    each_word(code)
    each_of(code, ") return;", ") {}", "early return")
    each_of(code, ") continue;", ") {}", "early return")
    each_of(code, "return true;", "return false;", "condition")
    each_of(code, "return false;", "return true;", "condition")
    each_of(code, " = true;", " = false;", "condition")
    each_of(code, " = false;", " = true;", "condition")
    each_of(code, "(!", "(", "condition")
    each_of(code, "any_of(", "all_of(", "condition")
    each_of(code, "none_of(", "any_of(", "condition")
    each_of(code, "lower_bound(", "upper_bound(", "bound")
    each_of(code, "upper_bound(", "lower_bound(", "bound")
    each_of(code, ".first_row", ".last_row", "place")
    each_of(code, ".last_row", ".first_row", "place")
    each_of(code, ".first_column", ".last_column", "place")
    each_of(code, ".last_column", ".first_column", "place")
    each_of(code, ".front()", ".back()", "place")
    each_of(code, ".back()", ".front()", "place")
    if (code ~ /^ *(return|continue|break);$/) mutant(match(code, /[rcb]/), length(code) - match(code, /[rcb]/) + 1, ";", "early return")
    if (code ~ /^ *\+\+[a-z_.]+;$/) mutant(match(code, /\+/), 2, "--", "sign")
}
