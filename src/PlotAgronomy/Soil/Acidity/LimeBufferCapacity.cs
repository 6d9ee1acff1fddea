using System.Globalization;

namespace PlotAgronomy.Soil;

/// <summary>Georgia's lime buffer capacity: mg of calcium carbonate per kg of soil and pH unit, at equilibrium.</summary>
/// <remarks>Equality is exact. The default is zero.</remarks>
public readonly record struct LimeBufferCapacity
{
    private LimeBufferCapacity(double milligramsPerKilogramPerPh, double? thirtyMinutes = null)
    {
        MilligramsPerKilogramPerPh = milligramsPerKilogramPerPh;
        ThirtyMinutes = thirtyMinutes;
    }

    /// <summary>Gets the capacity at equilibrium in mg/kg per pH unit.</summary>
    public double MilligramsPerKilogramPerPh { get; }

    /// <summary>The reading after 30 minutes it was reckoned from, or null; it does not count when two are compared.</summary>
    internal double? ThirtyMinutes { get; }

    /// <summary>Creates a capacity at equilibrium.</summary>
    /// <param name="milligramsPerKilogramPerPh">Capacity; above 0, at most 5000 mg/kg per pH unit.</param>
    /// <returns>The capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static LimeBufferCapacity AtEquilibrium(double milligramsPerKilogramPerPh) =>
        new(Guard.AboveUpTo(milligramsPerKilogramPerPh, 0, SoilConstants.All["largest-capacity"], "mg/kg per pH"));

    /// <summary>Creates a capacity from the reading after 30 minutes, which is too low.</summary>
    /// <param name="milligramsPerKilogramPerPh">Reading; above 0, at most 1200 mg/kg per pH unit.</param>
    /// <returns>The capacity at equilibrium.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    /// <remarks>LBCeq = LBC30 x (1.4742 + 0.0023 x LBC30) (LIME-S36).</remarks>
    public static LimeBufferCapacity FromThirtyMinutes(double milligramsPerKilogramPerPh) =>
        new(
            EquilibriumOf(
                Guard.AboveUpTo(milligramsPerKilogramPerPh, 0, SoilConstants.All["largest-30-minute-capacity"], "mg/kg per pH"),
                SoilConstants.All["ga-equilibrium-constant"],
                SoilConstants.All["ga-equilibrium-slope"]
            ),
            milligramsPerKilogramPerPh
        );

    /// <summary>Compares the capacities at equilibrium.</summary>
    /// <param name="other">Another capacity.</param>
    /// <returns>True when they are exactly equal.</returns>
    public bool Equals(LimeBufferCapacity other) => MilligramsPerKilogramPerPh.Equals(other.MilligramsPerKilogramPerPh);

    /// <summary>Hash of the capacity at equilibrium.</summary>
    /// <returns>The hash.</returns>
    public override int GetHashCode() => MilligramsPerKilogramPerPh.GetHashCode();

    /// <summary>Invariant text such as <c>272.9 mg/kg per pH</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{MilligramsPerKilogramPerPh:0.#} mg/kg per pH");

    /// <summary>LBCeq = LBC30 x (a + b x LBC30).</summary>
    internal static double EquilibriumOf(double thirtyMinuteMgPerKgPerPh, double constant, double slope) =>
        thirtyMinuteMgPerKgPerPh * (constant + (slope * thirtyMinuteMgPerKgPerPh));
}
