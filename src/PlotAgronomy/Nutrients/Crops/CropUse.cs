using System.Runtime.CompilerServices;

namespace PlotAgronomy.Nutrients;

/// <summary>The crop row to feed, what it should yield, and whether the crop leaves the plot.</summary>
/// <remarks>On a plot that is only browsed nothing is carried off, so no system adds removal: hay potash on a browsed
/// clover plot would be several times too much. It is only equal to itself; <c>use with { ... }</c> makes another one.</remarks>
public sealed record CropUse
{
    private CropUse(CropRow row, CropYield? yield, bool isCarriedOff)
    {
        Row = Guard.Defined(row);
        Yield = yield;
        IsCarriedOff = isCarriedOff;
        if (yield is { } given && given.Unit != CropRows.UnitOf(row))
        {
            throw new ArgumentException(
                $"A yield of {CropRows.WordsFor(row)} is given in {NutrientWords.InFull(CropRows.UnitOf(row))}, found {given}.",
                nameof(yield)
            );
        }
    }

    /// <summary>Gets the crop row.</summary>
    public CropRow Row { get; }

    /// <summary>Gets the expected yield, or null when none was given.</summary>
    public CropYield? Yield { get; }

    /// <summary>Gets whether the crop is harvested and carried off the plot.</summary>
    public bool IsCarriedOff { get; }

    /// <summary>Gets the phosphate that leaves with the crop, when the caller states it instead of the system's own
    /// figure.</summary>
    public ApplicationRate? StatedPhosphateRemoval { get; private init; }

    /// <summary>Gets the potash that leaves with the crop, when the caller states it instead of the system's own
    /// figure.</summary>
    public ApplicationRate? StatedPotashRemoval { get; private init; }

    /// <summary>Gets the years over which a poor soil is built up; null takes the system's own (Missouri: 4 or 8 for
    /// phosphorus).</summary>
    public int? BuildUpYears { get; init; }

    /// <summary>A crop that stays on the plot and is only browsed.</summary>
    /// <param name="row">Crop row.</param>
    /// <param name="expectedYield">Yield hoped for, for systems that ask for it; in the row's own unit.</param>
    /// <returns>The use.</returns>
    /// <exception cref="ArgumentException">Bushels for a forage or tons for a grain.</exception>
    public static CropUse Browsed(CropRow row, CropYield? expectedYield = null) => new(row, expectedYield, false);

    /// <summary>A crop that is harvested and carried off; each system uses its own figure for what leaves with a unit of
    /// yield.</summary>
    /// <param name="row">Crop row.</param>
    /// <param name="yield">Yield carried off; in the row's own unit.</param>
    /// <returns>The use.</returns>
    /// <exception cref="ArgumentException">Bushels for a forage or tons for a grain.</exception>
    public static CropUse CarriedOff(CropRow row, CropYield yield) => new(row, yield, true);

    /// <summary>A crop that is wholly or partly carried off, with removal stated by the caller.</summary>
    /// <param name="row">Crop row.</param>
    /// <param name="yield">Yield; in the row's own unit.</param>
    /// <param name="phosphateRemoval">P2O5 that leaves the plot.</param>
    /// <param name="potashRemoval">K2O that leaves the plot.</param>
    /// <returns>The use.</returns>
    /// <exception cref="ArgumentException">Bushels for a forage or tons for a grain.</exception>
    public static CropUse CarriedOff(
        CropRow row,
        CropYield yield,
        ApplicationRate phosphateRemoval,
        ApplicationRate potashRemoval
    ) => new(row, yield, true) { StatedPhosphateRemoval = phosphateRemoval, StatedPotashRemoval = potashRemoval };

    /// <summary>Text such as <c>alfalfa, browsed</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string use = IsCarriedOff ? "carried off" : "browsed";
        return Yield is { } yield ? $"{CropRows.WordsFor(Row)}, {yield}, {use}" : $"{CropRows.WordsFor(Row)}, {use}";
    }

    /// <summary>Whether this is the very same use.</summary>
    /// <param name="other">Other use.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(CropUse? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    internal ApplicationRate? StatedRemovalOf(PlantNutrient nutrient) =>
        nutrient == PlantNutrient.Phosphate ? StatedPhosphateRemoval : StatedPotashRemoval;
}
