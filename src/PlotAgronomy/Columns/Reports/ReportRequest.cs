using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Columns;

/// <summary>What is asked of every report of a table.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record ReportRequest
{
    /// <summary>Gets the lime method; null to ask no lime.</summary>
    public LimeMethod? LimeMethod { get; init; }

    /// <summary>Gets the pH aimed at, which belongs to the crop; null only where no lime is asked.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 4 to 9.</exception>
    public double? TargetPh
    {
        get;
        init => field = value is { } ph ? LimeLimits.TargetPh(ph, nameof(TargetPh)) : null;
    }

    /// <summary>Gets the system that recommends phosphate and potash; null to ask none.</summary>
    public RecommendationSystem? System { get; init; }

    /// <summary>Gets the crop of reports that name none; null where every report names its own.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown row.</exception>
    public CropRow? Crop
    {
        get;
        init => field = Guard.Defined(value, nameof(Crop));
    }

    /// <summary>Gets what the crop words of the table mean, beside the words of <see cref="CropRows"/>.</summary>
    public IReadOnlyDictionary<string, CropRow> CropWords
    {
        get;
        init =>
            field = new Dictionary<string, CropRow>(
                Guard.NotNull(value, nameof(CropWords)),
                StringComparer.OrdinalIgnoreCase
            );
    } = ImmutableDictionary<string, CropRow>.Empty;

    /// <summary>The crop row of a report; null where nobody names one, or not in known words.</summary>
    internal CropRow? CropOf(TabledReport row) =>
        row.Crop.Length == 0 ? Crop
        : CropWords.TryGetValue(row.Crop, out var own) ? own
        : CropRows.TryFind(row.Crop, out var found, out _) ? found
        : null;

    /// <summary>What is asked, in words.</summary>
    /// <returns>Text such as <c>lime by Oregon, Sikora buffer, to pH 6.4; Tri-State 2020 (2020)</c>.</returns>
    public override string ToString()
    {
        string? lime = LimeMethod is { } method ? $"lime by {method}{ToTarget()}" : null;
        return string.Join("; ", new[] { lime, System?.ToString() }.Where(asked => asked is not null));
    }

    private string ToTarget() => TargetPh is { } ph ? $", to pH {Amounts.Print(ph, 2)}" : "";

    /// <summary>Whether this is the very same request.</summary>
    /// <param name="other">Other request.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(ReportRequest? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);
}
