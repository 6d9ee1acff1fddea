using System.Collections.Immutable;
using System.Text;
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

    /// <summary>The dry part of a sample that was weighed wet and dried, its container both times.</summary>
    /// <param name="wet">Weight with the container before drying.</param>
    /// <param name="dry">Weight with the container after drying.</param>
    /// <param name="container">Weight of the container.</param>
    /// <returns>The dry part.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A weight below 0, or weights that do not fall from wet to dry to the
    /// container.</exception>
    public static Fraction DryPart(Mass wet, Mass dry, Mass container)
    {
        double wetGrams = wet.Grams;
        double dryGrams = dry.Grams;
        double containerGrams = container.Grams;
        Guard.AtLeast(containerGrams, 0, "g", nameof(container));
        Guard.AtLeast(dryGrams, containerGrams, "g", nameof(dry));
        Guard.Above(wetGrams, containerGrams, "g", nameof(wet));
        Guard.AtLeast(wetGrams, dryGrams, "g", nameof(wet));
        return Fraction.FromValue(RecordMath.DryShare(dryGrams, wetGrams, containerGrams));
    }

    internal override string What => Word;

    internal double SquareFeet => squareFeet;

    /// <inheritdoc/>
    protected override bool PrintMembers(StringBuilder builder) => base.PrintMembers(builder);

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
