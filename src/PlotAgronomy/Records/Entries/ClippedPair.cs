using System.Text;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>What was clipped inside one cage and on the open ground chosen for it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record ClippedPair
{
    private readonly double insideGrams;
    private readonly double outsideGrams;

    /// <summary>Gets the weight from inside the cage.</summary>
    public required Mass Inside
    {
        get => Mass.FromGrams(insideGrams);
        init
        {
            double grams = value.Grams;
            insideGrams = Guard.AtLeast(grams, 0, "g", nameof(Inside));
        }
    }

    /// <summary>Gets the weight from the open ground.</summary>
    public required Mass Outside
    {
        get => Mass.FromGrams(outsideGrams);
        init
        {
            double grams = value.Grams;
            outsideGrams = Guard.AtLeast(grams, 0, "g", nameof(Outside));
        }
    }

    internal double InsideGrams => insideGrams;

    internal double OutsideGrams => outsideGrams;

    /// <summary>Both weights.</summary>
    /// <returns>Text such as <c>120 g inside, 60 g outside</c>.</returns>
    public override string ToString() => $"{Amounts.Print(Inside, "g", 1)} inside, {Amounts.Print(Outside, "g", 1)} outside";

    private bool PrintMembers(StringBuilder builder)
    {
        builder.Append(ToString());
        return true;
    }

    internal void Write(FieldWriter to)
    {
        to.Quantity("inside", insideGrams, "g");
        to.Quantity("outside", outsideGrams, "g");
    }

    internal static ClippedPair Read(FieldReader from) =>
        from.Try("inside", () =>
            new ClippedPair
            {
                Inside = Mass.FromGrams(from.Quantity("inside", "g")),
                Outside = Mass.FromGrams(from.Quantity("outside", "g")),
            }
        );
}
