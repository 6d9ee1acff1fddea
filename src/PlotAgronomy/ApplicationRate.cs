using System.Globalization;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>Mass of material per unit of land area.</summary>
/// <remarks>Held in lb/ac, so that limits printed in lb/ac compare exactly. Equality is exact: after
/// arithmetic compare within a tolerance. The default is zero. Source of the factors: international
/// pound 0.45359237 kg, international acre 43,560 ft2 = 4046.8564224 m2, short ton 2000 lb, all exact.</remarks>
/// <example>
/// <code>
/// var rate = ApplicationRate.FromPoundsPerAcre(20);
/// Console.WriteLine(rate.Over(Area.FromSquareFeet(10_890)).Pounds);
/// // 5
/// Console.WriteLine(ApplicationRate.FromMassAndArea(Mass.FromPounds(2), Area.FromSquareFeet(1000)));
/// // 87.12 lb/ac
/// </code>
/// </example>
[JsonConverter(typeof(JsonTextConverter<ApplicationRate>))]
public readonly record struct ApplicationRate : IComparable<ApplicationRate>, IJsonText<ApplicationRate>
{
    private const double SquareMetersPerHectare = 10_000;
    private const double KilogramsPerTonne = 1000;

    private ApplicationRate(double poundsPerAcre) => PoundsPerAcre = Guard.Finite(poundsPerAcre, "lb/ac");

    /// <summary>Gets a rate of nothing.</summary>
    public static ApplicationRate Zero => default;

    /// <summary>Gets the rate in lb/ac.</summary>
    public double PoundsPerAcre { get; }

    /// <summary>Gets the rate in lb per 1000 ft2.</summary>
    public double PoundsPerThousandSquareFeet => PoundsPerAcre / ExactUnits.ThousandSquareFeetPerAcre;

    /// <summary>Gets the rate in oz per 1000 ft2.</summary>
    public double OuncesPerThousandSquareFeet => PoundsPerThousandSquareFeet * ExactUnits.OuncesPerPound;

    /// <summary>Gets the rate in short tons (2000 lb) per acre.</summary>
    public double ShortTonsPerAcre => PoundsPerAcre / ExactUnits.PoundsPerShortTon;

    /// <summary>Gets the rate in kg/ha.</summary>
    public double KilogramsPerHectare =>
        PoundsPerAcre * ExactUnits.KilogramsPerPound * SquareMetersPerHectare / ExactUnits.SquareMetersPerAcre;

    /// <summary>Gets the rate in tonnes per hectare.</summary>
    public double TonnesPerHectare => KilogramsPerHectare / KilogramsPerTonne;

    /// <summary>Creates a rate from lb/ac.</summary>
    /// <param name="poundsPerAcre">Rate in lb/ac; finite, at least 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static ApplicationRate FromPoundsPerAcre(double poundsPerAcre) => new(Guard.AtLeast(poundsPerAcre, 0, "lb/ac"));

    /// <summary>Creates a rate from lb per 1000 ft2.</summary>
    /// <param name="poundsPerThousandSquareFeet">Rate in lb per 1000 ft2; finite, at least 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static ApplicationRate FromPoundsPerThousandSquareFeet(double poundsPerThousandSquareFeet) =>
        new(Guard.AtLeast(poundsPerThousandSquareFeet, 0, "lb/1000 ft2") * ExactUnits.ThousandSquareFeetPerAcre);

    /// <summary>Creates a rate from oz per 1000 ft2.</summary>
    /// <param name="ouncesPerThousandSquareFeet">Rate in oz per 1000 ft2; finite, at least 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static ApplicationRate FromOuncesPerThousandSquareFeet(double ouncesPerThousandSquareFeet) =>
        new(
            Guard.AtLeast(ouncesPerThousandSquareFeet, 0, "oz/1000 ft2")
                / ExactUnits.OuncesPerPound
                * ExactUnits.ThousandSquareFeetPerAcre
        );

    /// <summary>Creates a rate from short tons (2000 lb) per acre.</summary>
    /// <param name="shortTonsPerAcre">Rate in ton/ac; finite, at least 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static ApplicationRate FromShortTonsPerAcre(double shortTonsPerAcre) =>
        new(Guard.AtLeast(shortTonsPerAcre, 0, "ton/ac") * ExactUnits.PoundsPerShortTon);

    /// <summary>Creates a rate from kg/ha.</summary>
    /// <param name="kilogramsPerHectare">Rate in kg/ha; finite, at least 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static ApplicationRate FromKilogramsPerHectare(double kilogramsPerHectare) =>
        new(
            Guard.AtLeast(kilogramsPerHectare, 0, "kg/ha")
                / ExactUnits.KilogramsPerPound
                * ExactUnits.SquareMetersPerAcre
                / SquareMetersPerHectare
        );

    /// <summary>Creates a rate from tonnes per hectare.</summary>
    /// <param name="tonnesPerHectare">Rate in t/ha; finite, at least 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static ApplicationRate FromTonnesPerHectare(double tonnesPerHectare) =>
        FromKilogramsPerHectare(Guard.AtLeast(tonnesPerHectare, 0, "t/ha") * KilogramsPerTonne);

    /// <summary>Creates a rate from bushels per acre.</summary>
    /// <param name="bushelsPerAcre">Rate in bu/ac; finite, at least 0.</param>
    /// <param name="bushelWeight">Weight of a bushel of this seed; finite, above 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>lb/ac = bu/ac x lb/bu. A bushel weighs what the lot weighs: 32 lb of oats or 36.</remarks>
    public static ApplicationRate FromBushelsPerAcre(double bushelsPerAcre, Density bushelWeight)
    {
        double poundsPerBushel = bushelWeight.PoundsPerCubicFoot * ExactUnits.CubicFeetPerBushel;
        return new(Guard.AtLeast(bushelsPerAcre, 0, "bu/ac") * Guard.Above(poundsPerBushel, 0, "lb/bu", nameof(bushelWeight)));
    }

    /// <summary>Rate at which a mass was spread over an area.</summary>
    /// <param name="mass">Mass spread; finite, at least 0.</param>
    /// <param name="area">Area covered; finite, above 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static ApplicationRate FromMassAndArea(Mass mass, Area area)
    {
        double pounds = mass.Pounds;
        double acres = area.Acres;
        return new(Guard.AtLeast(pounds, 0, "lb", nameof(mass)) / Guard.Above(acres, 0, "ac", nameof(area)));
    }

    /// <summary>Area that a mass covers at this rate, such as a bag.</summary>
    /// <param name="mass">Mass to spread; finite, at least 0.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    /// <exception cref="InvalidOperationException">This rate is zero: no mass covers anything.</exception>
    public Area AreaCoveredBy(Mass mass)
    {
        double pounds = mass.Pounds;
        Guard.AtLeast(pounds, 0, "lb", nameof(mass));
        return PoundsPerAcre > 0
            ? Area.FromAcres(pounds / PoundsPerAcre)
            : throw new InvalidOperationException("At a rate of zero no mass covers an area.");
    }

    /// <summary>Mass that covers an area at this rate.</summary>
    /// <param name="area">Area to cover; finite, at least 0.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public Mass Over(Area area)
    {
        double acres = area.Acres;
        double pounds = PoundsPerAcre * Guard.AtLeast(acres, 0, "ac", nameof(area));
        return Mass.FromPounds(Guard.Finite(pounds, "lb", nameof(area)));
    }

    /// <inheritdoc/>
    public int CompareTo(ApplicationRate other) => PoundsPerAcre.CompareTo(other.PoundsPerAcre);

    /// <summary>Sum of two rates.</summary>
    /// <param name="left">First rate.</param>
    /// <param name="right">Second rate.</param>
    /// <returns>The sum.</returns>
    public static ApplicationRate operator +(ApplicationRate left, ApplicationRate right) =>
        new(left.PoundsPerAcre + right.PoundsPerAcre);

    /// <summary>A multiple of a rate.</summary>
    /// <param name="rate">Rate.</param>
    /// <param name="factor">Pure number; finite, at least 0.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite factor.</exception>
    public static ApplicationRate operator *(ApplicationRate rate, double factor) =>
        new(rate.PoundsPerAcre * Guard.AtLeast(factor, 0, "(a pure number)"));

    /// <summary>Ratio of two rates.</summary>
    /// <param name="left">Numerator.</param>
    /// <param name="right">Denominator; above 0.</param>
    /// <returns>A pure number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The denominator is zero.</exception>
    public static double operator /(ApplicationRate left, ApplicationRate right) =>
        left.PoundsPerAcre / Guard.Above(right.PoundsPerAcre, 0, "lb/ac", nameof(right));

    /// <summary>Compares two rates.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is smaller.</returns>
    public static bool operator <(ApplicationRate left, ApplicationRate right) => left.PoundsPerAcre < right.PoundsPerAcre;

    /// <summary>Compares two rates.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is greater.</returns>
    public static bool operator >(ApplicationRate left, ApplicationRate right) => left.PoundsPerAcre > right.PoundsPerAcre;

    /// <summary>Compares two rates.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is smaller or equal.</returns>
    public static bool operator <=(ApplicationRate left, ApplicationRate right) => left.PoundsPerAcre <= right.PoundsPerAcre;

    /// <summary>Compares two rates.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is greater or equal.</returns>
    public static bool operator >=(ApplicationRate left, ApplicationRate right) => left.PoundsPerAcre >= right.PoundsPerAcre;

    /// <summary>Invariant text such as <c>12.5 lb/ac</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{PoundsPerAcre:0.###} lb/ac");

    static string IJsonText<ApplicationRate>.ToJsonText(ApplicationRate value) => $"{ExactText.Of(value.PoundsPerAcre)} lb/ac";

    static ApplicationRate IJsonText<ApplicationRate>.FromJsonText(string text) =>
        UnitWords.Rates.TryRead(text, false, out double poundsPerAcre, out string problem)
            ? FromPoundsPerAcre(poundsPerAcre)
            : throw new FormatException(problem);
}
