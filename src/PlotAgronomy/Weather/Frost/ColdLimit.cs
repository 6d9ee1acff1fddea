using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>Cold that harms a kind, as one publication prints it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class ColdLimit
{
    private static readonly Table<ColdLimit> Table = new("Weather/Data/cold-limits.csv", row => new(row));

    private readonly ImmutableArray<string> kindIds;

    private ColdLimit(CsvRow row)
    {
        kindIds = row.List("kind_ids");
        Words = row.Text("words");
        Milder = Temperature.FromDegreesCelsius(row.Number("milder_c"));
        Colder = row.NumberOrNull("colder_c") is { } colder ? Temperature.FromDegreesCelsius(colder) : null;
        Origin = row.Origin();
    }

    /// <summary>Gets what happens, such as <c>killed</c>.</summary>
    public string Words { get; }

    /// <summary>Gets the milder end: harm begins below it.</summary>
    public Temperature Milder { get; }

    /// <summary>Gets the colder end; null where one temperature is printed.</summary>
    public Temperature? Colder { get; }

    /// <summary>Gets where it stands.</summary>
    public Origin Origin { get; }

    /// <summary>The limits that publications print for a kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>The limits, in the order of the table; they do not always agree.</returns>
    public static ImmutableArray<ColdLimit> Of(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return [.. Table.Rows.Where(r => r.kindIds.Contains(kind.Id))];
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Words;
}
