using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The rating systems of this library.</summary>
public static class RatingSystems
{
    private static readonly Table<RatingSystem> Systems = new("Nutrients/Data/rating-systems.csv", r => new RatingSystem(
        r.Text("id"),
        r.Text("name"),
        r.Text("institution"),
        r.Status()
    ));

    /// <summary>Gets every rating system.</summary>
    public static ImmutableArray<RatingSystem> All => Systems.Rows;

    /// <summary>Gets North Carolina's index classes.</summary>
    public static RatingSystem NorthCarolina => Find("NC");

    /// <summary>Gets Delaware's fertility index.</summary>
    public static RatingSystem Delaware => Find("DE");

    /// <summary>Gets New Jersey's relative levels.</summary>
    public static RatingSystem NewJersey => Find("NJ");

    /// <summary>Gets the salinity classes of soluble salts by saturated paste.</summary>
    public static RatingSystem Salinity => Find("SALT");

    /// <summary>Finds a system by its id.</summary>
    /// <param name="id">Id, such as <c>DE</c>.</param>
    /// <returns>The system.</returns>
    /// <exception cref="KeyNotFoundException">No system has this id.</exception>
    public static RatingSystem Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return All.FirstOrDefault(s => s.Id == id)
            ?? throw new KeyNotFoundException(
                $"No rating system has the id '{id}'. Known: {string.Join(", ", All.Select(s => s.Id))}."
            );
    }
}
