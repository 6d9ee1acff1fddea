using System.Collections.Immutable;
using System.Text;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>Seed that was sown: the lots with the weights really used, how, and in how many passes.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record SowingEntry : BookEntry
{
    internal const string Word = "sowing";

    private readonly double acres;

    /// <summary>Gets the lots.</summary>
    public required ImmutableArray<SownLot> Lots
    {
        get;
        init =>
            field = Guard.Listed(value, nameof(Lots)).IsEmpty
                ? throw new ArgumentException("Must hold a lot.", nameof(Lots))
                : value;
    }

    /// <summary>Gets the area that was sown.</summary>
    public required Area Area
    {
        get => Area.FromAcres(acres);
        init => acres = Guard.Positive(value, nameof(Area)).Acres;
    }

    /// <summary>Gets how it was sown.</summary>
    public required SowingMethod Method
    {
        get;
        init => field = Guard.Defined(value, nameof(Method));
    }

    /// <summary>Gets the name of the blend; null where it has none.</summary>
    public string? Blend
    {
        get;
        init => field = value is null ? null : Guard.NotBlank(value, nameof(Blend));
    }

    /// <summary>Gets the passes over the plot; null where they were not counted.</summary>
    public int? Passes
    {
        get;
        init => field = value is { } count ? Guard.AtLeast(count, 1, "passes", nameof(Passes)) : null;
    }

    /// <summary>Gets a value indicating whether it was rolled or packed; null where it is not stated.</summary>
    public bool? IsPacked { get; init; }

    /// <summary>Gets a value indicating whether the seedbed was moist; null where it is not stated.</summary>
    public bool? IsMoist { get; init; }

    /// <summary>Gets the kinds, each once.</summary>
    public ImmutableArray<CropKind> Kinds => [.. Lots.Select(l => l.Lot.Kind).DistinctBy(k => k.Id)];

    internal override string What => Word;

    internal double Acres => acres;

    /// <inheritdoc/>
    protected override bool PrintMembers(StringBuilder builder) => base.PrintMembers(builder);

    internal override void Write(FieldWriter to)
    {
        to.Text("blend", Blend);
        to.Quantity("area", acres, "ac");
        to.Choice<SowingMethod>("method", Method, SowingMethods.Words);
        to.Number("passes", Passes);
        to.Flag("packed", IsPacked);
        to.Flag("moist", IsMoist);
        foreach (var lot in Lots)
        {
            lot.Write(to.Part());
        }
    }

    internal static SowingEntry Read(FieldReader from, DateOnly on, string plot) =>
        new()
        {
            On = on,
            Plot = plot,
            Blend = from.TextOrNull("blend"),
            Area = Area.FromAcres(from.Quantity("area", "ac")),
            Method = from.Choice("method", SowingMethods.Words),
            Passes = from.WholeOrNull("passes"),
            IsPacked = from.FlagOrNull("packed"),
            IsMoist = from.FlagOrNull("moist"),
            Lots = [.. from.Parts.Select(SownLot.Read)],
        };
}
