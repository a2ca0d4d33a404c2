#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

void find_all(const Workings& workings, Findings& findings) {
    find_errors(workings, findings);
    find_circles(workings, findings);
    find_failed_checks(workings, findings);
    find_typed_over(workings, findings);
    find_neighbours(workings, findings);
    find_bare_numbers(workings, findings);
    find_unit_slips(workings, findings);
    find_unit_texts(workings, findings);
    find_blank_references(workings, findings);
    find_short_sums(workings, findings);
    find_unused(workings, findings);
    find_links(workings, findings);
    find_hidden(workings, findings);
    find_file_risks(workings, findings);
}

}  // namespace undercroft::audit
