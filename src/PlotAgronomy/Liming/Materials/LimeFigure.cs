using PlotAgronomy.Liming;

namespace PlotAgronomy;

/// <summary>A material's rating in one state's index, such as ENP 1,800 lb/ton. It has no meaning in another index.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeFigure
{
    private LimeFigure(LimeIndex index, double value)
    {
        Index = index;
        Value = value;
    }

    /// <summary>Gets the index.</summary>
    public LimeIndex Index { get; }

    /// <summary>Gets the figure as a pure number in the unit of the index, from 0 to 2.5 times the index's whole.</summary>
    public double Value { get; }

    /// <summary>Gets the figure as a share of what the index gives to pure carbonate powder.</summary>
    public double ShareOfWhole => Value / Index.Whole;

    /// <summary>Creates a figure.</summary>
    /// <param name="index">Index.</param>
    /// <param name="value">Figure in the unit of the index; from 0 to 2.5 times its whole.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range: often a figure of another index or unit.</exception>
    public static LimeFigure FromValue(LimeIndex index, double value)
    {
        ArgumentNullException.ThrowIfNull(index);
        return new(index, Guard.Between(value, 0, LimingConstants.All["largest-share-of-whole"] * index.Whole, index.Unit));
    }

    /// <summary>North Carolina's label: the pounds of this product that equal one ton of standard lime.</summary>
    /// <param name="poundsEqualToOneTon">Pounds as printed; above 0.</param>
    /// <returns>The figure: 2000 divided by the pounds, in percent.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or so small that the figure is beyond any lime.</exception>
    public static LimeFigure FromNorthCarolinaLabel(double poundsEqualToOneTon) =>
        new(
            LimeIndex.NorthCarolinaStandard,
            FromValue(
                LimeIndex.NorthCarolinaStandard,
                LimeStrength.NorthCarolinaLabelPercent(Guard.Above(poundsEqualToOneTon, 0, "lb"))
            ).Value
        )
        {
            PoundsEqualToOneTon = poundsEqualToOneTon,
        };

    /// <summary>North Carolina's label as it was read, or null.</summary>
    internal double? PoundsEqualToOneTon { get; private init; }

    internal static LimeFigure OfBasis(LimeIndex index, double value) => new(index, value);

    /// <summary>Text such as <c>1,313.6 lb/ton (Ohio effective neutralizing power)</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Value, 2)} {Index.Unit} ({Index.Name})";
}
