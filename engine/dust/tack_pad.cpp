#include "dust/tack_pad.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::dust {

double pad_capture_at(double fresh, Loading load, Loading full)
{
    insist(fresh >= 0.0 && fresh <= 1.0 && load.si >= 0.0 && full.si > 0.0, "a pad takes a share and fills up");
    return fresh * std::max(0.0, 1.0 - load / full);
}

double captured_in(double per_contact, int contacts)
{
    insist(per_contact >= 0.0 && per_contact <= 1.0 && contacts >= 0, "contacts take shares");
    double left = 1.0;
    for (int i = 0; i < contacts; ++i) left *= 1.0 - per_contact;
    return 1.0 - left;
}

}
