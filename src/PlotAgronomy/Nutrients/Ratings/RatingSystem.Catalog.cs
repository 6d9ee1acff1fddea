using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <content>The rating systems of this library.</content>
public sealed partial class RatingSystem
{
    private static readonly Table<RatingSystem> Table = new("Nutrients/Data/rating-systems.csv", r => new RatingSystem(
        r,
        RatingTables.Of(r.Text("id"))
    ));

    private static readonly Catalog<RatingSystem> Catalog = new("rating system", () => Table.Rows, s => s.Id, s => s.Status);

    private static readonly Lazy<IReadOnlyDictionary<string, RatingSystem>> ByProperty = new(() =>
        Table.Rows.Where(s => s.Property is not null).ToDictionary(s => s.Property!)
    );

    /// <summary>Gets the systems whose limits were all seen in print, or are practice.</summary>
    public static ImmutableArray<RatingSystem> All => Catalog.All;

    /// <summary>Gets the systems with limits from memory; a rating that rests on one carries a finding.</summary>
    internal static ImmutableArray<RatingSystem> Unchecked => Catalog.Unchecked;

    /// <summary>Gets North Carolina's index classes.</summary>
    public static RatingSystem NorthCarolina => Everyday();

    /// <summary>Gets Delaware's fertility index.</summary>
    public static RatingSystem Delaware => Everyday();

    /// <summary>Gets New Jersey's relative levels.</summary>
    internal static RatingSystem NewJersey => Everyday();

    /// <summary>Gets the salinity classes of soluble salts by saturated paste.</summary>
    internal static RatingSystem Salinity => Everyday();

    /// <summary>Finds a system by its id, checked or not.</summary>
    /// <param name="id">Id, such as <c>DE</c>.</param>
    /// <returns>The system.</returns>
    /// <exception cref="KeyNotFoundException">No system has this id; the message lists all.</exception>
    public static RatingSystem Find(string id) => Catalog.Find(id);

    /// <summary>Finds a system by its id, checked or not.</summary>
    /// <param name="id">Id, such as <c>DE</c>; may be null.</param>
    /// <param name="system">The system, or null.</param>
    /// <param name="problem">Why there is none, with a list of all ids; empty when there is one.</param>
    /// <returns>True when there is one.</returns>
    public static bool TryFind(string? id, [NotNullWhen(true)] out RatingSystem? system, out string problem) =>
        Catalog.TryFind(id, out system, out problem);

    /// <summary>The system that the table gives a property of this name.</summary>
    private static RatingSystem Everyday([CallerMemberName] string property = "") => ByProperty.Value[property];
}
