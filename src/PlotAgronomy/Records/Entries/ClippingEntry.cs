using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>Forage clipped inside and outside cages.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record ClippingEntry : BookEntry
{
    internal const string Word = "clipping";

    private readonly double squareFeet;

    /// <summary>Gets the ground that was clipped in each cage, and beside it.</summary>
    public required Area Clipped
    {
        get => Area.FromSquareFeet(squareFeet);
        init => squareFeet = Guard.Positive(value, nameof(Clipped)).SquareFeet;
    }

    /// <summary>Gets the cages, each with its open ground.</summary>
    public required ImmutableArray<ClippedPair> Pairs
    {
        get;
        init =>
            field = Guard.Listed(value, nameof(Pairs)).IsEmpty
                ? throw new ArgumentException("Must hold a pair.", nameof(Pairs))
                : value;
    }

    /// <summary>Gets the dry part of the weights; null where they were dried before weighing.</summary>
    public Fraction? DryMatter
    {
        get;
        init
        {
            if (value is { } part)
            {
                Guard.AboveUpTo(part.Value, 0, 1, "of the wet weight", nameof(DryMatter));
            }

            field = value;
        }
    }

    internal override string What => Word;

    internal double SquareFeet => squareFeet;

    internal override void Write(FieldWriter to)
    {
        to.Quantity("clipped", squareFeet, "ft2");
        to.Value("dry-matter", DryMatter);
        foreach (var pair in Pairs)
        {
            pair.Write(to.Part());
        }
    }

    internal static ClippingEntry Read(FieldReader from, DateOnly on, string plot) =>
        new()
        {
            On = on,
            Plot = plot,
            Clipped = Area.FromSquareFeet(from.Quantity("clipped", "ft2")),
            DryMatter = from.ValueOrNull<Fraction>("dry-matter"),
            Pairs = [.. from.Parts.Select(ClippedPair.Read)],
        };
}
