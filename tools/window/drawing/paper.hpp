#pragma once

#include "window/base/geometry.hpp"

namespace flapdoor::window {

/// A place on a drawing, in meters: x to the east, y to the north; on an elevation y is the height above the floor.
struct PaperPoint {
    double x = 0.0;
    double y = 0.0;

    friend constexpr bool operator==(PaperPoint, PaperPoint) = default;
    friend constexpr PaperPoint operator+(PaperPoint a, PaperPoint b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr PaperPoint operator-(PaperPoint a, PaperPoint b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr PaperPoint operator*(PaperPoint a, double k) { return {a.x * k, a.y * k}; }
};

/// An upright rectangle on a drawing.
struct PaperBox {
    PaperPoint low;  ///< south west
    PaperPoint high; ///< north east

    friend constexpr bool operator==(const PaperBox&, const PaperBox&) = default;
    constexpr double width() const { return high.x - low.x; }
    constexpr double height() const { return high.y - low.y; }
    constexpr PaperPoint center() const { return (low + high) * 0.5; }
    constexpr bool contains(PaperPoint p) const { return p.x >= low.x && p.x < high.x && p.y >= low.y && p.y < high.y; }
};

PaperPoint along(PaperPoint from, PaperPoint to); ///< unit vector; (1, 0) when the two are one
constexpr PaperPoint left_of(PaperPoint direction) { return {-direction.y, direction.x}; }
double distance(PaperPoint a, PaperPoint b);

/// Which part of a drawing is seen where on the screen.
class PaperView {
public:
    PaperView() = default;

    /// The whole drawing in the middle of `window`. @param margin  pixels left free all round
    static PaperView fit(const PaperBox& drawing, const Box& window, float margin);

    Point at(PaperPoint p) const;
    PaperPoint paper(Point p) const;
    Box at(const PaperBox& box) const;
    float length(double meters) const { return static_cast<float>(meters * pixels_per_meter_); }
    double pixels_per_meter() const { return pixels_per_meter_; }

    void pan(Point by);
    /// @param factor  above 1 comes closer; the scale stays within 8 to 1200 px/m
    void zoom(double factor, Point about);

private:
    PaperPoint middle_; ///< what lies at `anchor_`
    Point anchor_;
    double pixels_per_meter_ = 60.0;
};

}
