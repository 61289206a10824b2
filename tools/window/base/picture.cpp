#include "window/base/picture.hpp"

#include "core/insist.hpp"

#include <SFML/Graphics/Image.hpp>

#include <utility>

namespace flapdoor::window {

Picture::Picture(int columns, int rows, Color fill)
    : width(columns), height(rows), pixels(static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows), fill)
{}

Result<std::filesystem::path> save_png(const Picture& picture, const std::filesystem::path& file)
{
    static_assert(sizeof(Color) == 4);
    sf::Image image;
    image.create(static_cast<unsigned>(picture.width), static_cast<unsigned>(picture.height),
                 reinterpret_cast<const sf::Uint8*>(picture.pixels.data()));
    if (!picture.pixels.empty() && image.saveToFile(file.string())) return file;
    Problem problem;
    problem.where.file = file.string();
    problem.expected = "a file name ending in .png that can be written";
    problem.found = "it could not be written";
    return failed(std::move(problem));
}

PictureId PictureShelf::add(Picture picture)
{
    const PictureId id{next_++};
    entries_[id] = {std::move(picture), ++revision_};
    return id;
}

void PictureShelf::replace(PictureId id, Picture picture)
{
    const auto found = entries_.find(id);
    insist(found != entries_.end(), "only a picture on the shelf can be replaced");
    found->second = {std::move(picture), ++revision_};
}

void PictureShelf::remove(PictureId id) { entries_.erase(id); }

const PictureShelf::Entry* PictureShelf::find(PictureId id) const
{
    const auto found = entries_.find(id);
    return found == entries_.end() ? nullptr : &found->second;
}

}
