#include "window/drawing/paper.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

PaperPoint along(PaperPoint from, PaperPoint to)
{
    const double length = distance(from, to);
    return length > 0.0 ? (to - from) * (1.0 / length) : PaperPoint{1.0, 0.0};
}

double distance(PaperPoint a, PaperPoint b) { return std::hypot(b.x - a.x, b.y - a.y); }

PaperView PaperView::fit(const PaperBox& drawing, const Box& window, float margin)
{
    PaperView view;
    const double across = static_cast<double>(std::max(window.width() - 2.0F * margin, 1.0F)) / std::max(drawing.width(), 1e-3);
    const double up = static_cast<double>(std::max(window.height() - 2.0F * margin, 1.0F)) / std::max(drawing.height(), 1e-3);
    view.pixels_per_meter_ = std::min(across, up);
    view.middle_ = drawing.center();
    view.anchor_ = window.center();
    return view;
}

Point PaperView::at(PaperPoint p) const
{
    return {anchor_.x + static_cast<float>((p.x - middle_.x) * pixels_per_meter_),
            anchor_.y - static_cast<float>((p.y - middle_.y) * pixels_per_meter_)};
}

PaperPoint PaperView::paper(Point p) const
{
    return {middle_.x + static_cast<double>(p.x - anchor_.x) / pixels_per_meter_,
            middle_.y - static_cast<double>(p.y - anchor_.y) / pixels_per_meter_};
}

Box PaperView::at(const PaperBox& box) const
{
    const Point a = at(box.low);
    const Point b = at(box.high);
    return {{a.x, b.y}, {b.x, a.y}};
}

void PaperView::pan(Point by) { anchor_ = anchor_ + by; }

void PaperView::zoom(double factor, Point about)
{
    middle_ = paper(about);
    anchor_ = about;
    pixels_per_meter_ = std::clamp(pixels_per_meter_ * factor, 8.0, 1200.0);
}

}
