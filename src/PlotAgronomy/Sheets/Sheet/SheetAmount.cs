using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Sheets;

/// <summary>The number of a figure, for other programs: not rounded, with its unit, and its range where it has one.</summary>
/// <remarks>People read <see cref="SheetFigure.Value"/>, which may tell more than this one number.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SheetAmount
{
    private SheetAmount(double? value, string unit, double? low, double? high)
    {
        Value = value;
        Unit = unit;
        Low = low;
        High = high;
    }

    /// <summary>Gets the number in <see cref="Unit"/>; null where only a range is known.</summary>
    public double? Value { get; }

    /// <summary>Gets the unit as it is printed, such as <c>lb</c>, <c>lb/ac</c>, <c>%</c>, <c>pH</c>, or the code of the
    /// currency.</summary>
    public string Unit { get; }

    /// <summary>Gets the lower end of the range; null where there is none.</summary>
    public double? Low { get; }

    /// <summary>Gets the upper end of the range; null where there is none.</summary>
    public double? High { get; }

    /// <summary>Text such as <c>766.5 lb</c> or <c>5.8 to 6 pH</c>, every digit written.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string range = Low is null ? "" : FormattableString.Invariant($"{Low} to {High}");
        return Value is null ? $"{range} {Unit}"
            : Low is null ? FormattableString.Invariant($"{Value} {Unit}")
            : FormattableString.Invariant($"{Value} ({range}) {Unit}");
    }

    internal static SheetAmount Number(double value, string unit) => new(Guard.Finite(value, unit), unit, null, null);

    internal static SheetAmount Range(double low, double high, string unit) =>
        new(null, unit, Guard.Finite(low, unit), Guard.Finite(high, unit));

    internal static SheetAmount Weight(Mass mass)
    {
        double pounds = mass.Pounds;
        return Number(pounds, "lb");
    }

    internal static SheetAmount Weight(BulkSeedMass seed) => Number(seed.Pounds, "lb");

    internal static SheetAmount Rate(ApplicationRate rate) => Number(rate.PoundsPerAcre, "lb/ac");

    internal static SheetAmount Tons(ApplicationRate rate) => Number(rate.ShortTonsPerAcre, "ton/ac");

    internal static SheetAmount Distance(Length length)
    {
        double feet = length.Feet;
        return Number(feet, "ft");
    }

    internal static SheetAmount Acres(Area area)
    {
        double acres = area.Acres;
        return Number(acres, "ac");
    }

    internal static SheetAmount Money(decimal amount, Currency currency) => Number((double)amount, currency.Code);

    internal SheetAmount Within(double low, double high) => new(Value, Unit, Guard.Finite(low, Unit), Guard.Finite(high, Unit));
}
