using System.Globalization;

namespace PlotAgronomy.Soil;

/// <summary>A soil pH read by oneself with a strip or a meter, and how far it may be off.</summary>
/// <remarks>It stands for no laboratory's reading: no rate is ordered by it.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed record HomePh
{
    private HomePh(double value, double error)
    {
        Value = value;
        Error = error;
    }

    /// <summary>Gets the pH as read.</summary>
    public double Value { get; }

    /// <summary>Gets how far it may be off, in pH.</summary>
    public double Error { get; }

    /// <summary>Gets the lowest pH it may stand for.</summary>
    public WaterPh Low => WaterPh.FromValue(Math.Max(SoilConstants.All["home-ph-least"], Value - Error));

    /// <summary>Gets the highest pH it may stand for.</summary>
    public WaterPh High => WaterPh.FromValue(Math.Min(SoilConstants.All["home-ph-most"], Value + Error));

    /// <summary>Creates a reading.</summary>
    /// <param name="value">pH as read; from 3 to 10, which is as far as strips go in soil.</param>
    /// <param name="error">How far it may be off; above 0, at most 2 pH; null takes 0.5.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range, NaN or infinite.</exception>
    public static HomePh FromValue(double value, double? error = null) =>
        new(
            Guard.Between(value, SoilConstants.All["home-ph-least"], SoilConstants.All["home-ph-most"], "pH"),
            Guard.AboveUpTo(
                error ?? SoilConstants.All["home-ph-error"],
                0,
                SoilConstants.All["home-ph-error-high"],
                "pH",
                nameof(error)
            )
        );

    /// <summary>Invariant text such as <c>pH 5.5, give or take 0.5</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"pH {Value:0.##}, give or take {Error:0.##}");
}
