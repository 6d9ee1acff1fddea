using System.Globalization;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>A small weight as a kitchen scale shows it: whole pounds and whole ounces.</summary>
/// <remarks>The default is nothing.</remarks>
[JsonConverter(typeof(JsonTextConverter<PoundsAndOunces>))]
public readonly record struct PoundsAndOunces : IJsonText<PoundsAndOunces>
{
    private const int OuncesPerPound = 16;

    private PoundsAndOunces(int pounds, int ounces) => (Pounds, Ounces) = (pounds, ounces);

    /// <summary>Gets the whole pounds.</summary>
    public int Pounds { get; }

    /// <summary>Gets the ounces beyond, from 0 to 15.</summary>
    public int Ounces { get; }

    /// <summary>Rounds a weight to the nearest ounce; a half goes up.</summary>
    /// <param name="mass">Weight; at least 0.</param>
    /// <returns>Pounds and ounces.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative weight.</exception>
    public static PoundsAndOunces Nearest(Mass mass)
    {
        double pounds = mass.Pounds;
        int ounces = checked(
            (int)Math.Round(Guard.AtLeast(pounds, 0, "lb", nameof(mass)) * OuncesPerPound, MidpointRounding.AwayFromZero)
        );
        return new PoundsAndOunces(ounces / OuncesPerPound, ounces % OuncesPerPound);
    }

    /// <summary>Invariant text.</summary>
    /// <returns>Text such as <c>2 lb 5 oz</c>.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Pounds} lb {Ounces} oz");

    static string IJsonText<PoundsAndOunces>.ToJsonText(PoundsAndOunces value) => value.ToString();

    static PoundsAndOunces IJsonText<PoundsAndOunces>.FromJsonText(string text)
    {
        var (pounds, ounces) = ExactText.Halves(ExactText.Before(text, " oz"), " lb ");
        return new(
            Guard.AtLeast(Whole(pounds), 0, "lb", nameof(text)),
            (int)Guard.Between(Whole(ounces), 0, OuncesPerPound - 1, "oz", nameof(text))
        );
    }

    private static int Whole(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);
}
