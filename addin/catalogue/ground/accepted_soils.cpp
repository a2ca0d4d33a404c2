#include "calc/ground/accepted_soils.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"

namespace undercroft::addin {

std::vector<Function> accepted_soil_functions() {
    return {
        function("UC.SOIL.ACCEPTED",
                 [](std::string group, std::string accepted) { return calc::soil_accepted(group, accepted); })
            .says("Whether a soil is of an AASHTO group that the contract accepts as fill; A-1, A-2 and A-7 "
                  "stand "
                  "for all of their subgroups")
            .also_called("fill acceptance, suitable fill, select fill, backfill class")
            .related({"UC.SOIL.GROUP", "UC.SOIL.INDEX"})
            .equation("1 where the group, or the one that it belongs to, is in the list")
            .source("groups of AASHTO M 145; the list is the contract's: granular groups without plastic "
                    "fines are "
                    "common as initial backfill (common practice, from memory)")
            .example("UC.SOIL.ACCEPTED(\"A-1-b\")", "1", "exact", Origin::from_memory,
                     "AASHTO M 145: A-1-b is of group A-1")
            .example("UC.SOIL.ACCEPTED(\"A-2-6\")", "0", "exact", Origin::common_practice,
                     "sand and gravel with clayey fines")
            .example("UC.SOIL.ACCEPTED(UC.SOIL.GROUP(100; 80; 58; 30; 10); \"A-1, A-2, A-3, A-4\")", "1",
                     "exact", Origin::published, "the soil of the first example of UC.SOIL.GROUP is A-4")
            .caution("A group says nothing of stones, organic matter or what the soil was dumped with. Local "
                     "codes and "
                     "a licensed engineer govern")
            .takes("group", "group", "AASHTO group, such as A-2-4: the result of UC.SOIL.GROUP")
            .takes("accepted", "list", "Groups that are accepted, parted by blanks or commas",
                   u"A-1 A-2-4 A-2-5 A-3")
            .gives("fits", "TRUE where the group is accepted"),
    };
}

}  // namespace undercroft::addin
