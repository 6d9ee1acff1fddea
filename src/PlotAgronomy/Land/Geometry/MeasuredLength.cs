using System.Globalization;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>A length with what is known of its error: one part shared by all lengths
/// measured the same way, one its own.</summary>
/// <remarks>Held in feet. A plain <see cref="Length"/> converts to one without a stated error. The default is zero.</remarks>
/// <example>
/// <code>
/// MeasuredLength taped = Length.FromFeet(140);
/// var paced = MeasuredLength.WithError(Length.FromFeet(140), standardError: Length.FromFeet(4));
/// Console.WriteLine(PlotArea.FromRectangle(taped, paced).RelativeError &gt; 0);
/// // True
/// </code>
/// </example>
[JsonConverter(typeof(JsonTextConverter<MeasuredLength>))]
public readonly record struct MeasuredLength : IJsonText<MeasuredLength>
{
    private MeasuredLength(double feet, double sharedRelativeError, double ownErrorFeet, bool isPaced)
    {
        Feet = feet;
        SharedRelativeError = sharedRelativeError;
        OwnErrorFeet = ownErrorFeet;
        IsPaced = isPaced;
    }

    /// <summary>Gets the length in feet.</summary>
    public double Feet { get; }

    /// <summary>Gets the standard error shared with every length of the same pace or tape,
    /// as a part of the length; a pure number.</summary>
    public double SharedRelativeError { get; }

    /// <summary>Gets the standard error in feet of this one length, independent of the others.</summary>
    public double OwnErrorFeet { get; }

    /// <summary>Gets a value indicating whether the length was paced.</summary>
    public bool IsPaced { get; }

    internal bool HasError => SharedRelativeError > 0 || OwnErrorFeet > 0;

    /// <summary>A length whose error is not known.</summary>
    /// <param name="length">Length; finite, at least 0.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static implicit operator MeasuredLength(Length length) => FromLength(length);

    /// <summary>A length whose error is not known.</summary>
    /// <param name="length">Length; finite, at least 0.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static MeasuredLength FromLength(Length length)
    {
        double feet = length.Feet;
        return new MeasuredLength(Guard.AtLeast(feet, 0, "ft", nameof(length)), 0, 0, false);
    }

    /// <summary>A length with a standard error of its own.</summary>
    /// <param name="length">Length; finite, at least 0.</param>
    /// <param name="standardError">Standard error; finite, at least 0.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static MeasuredLength WithError(Length length, Length standardError)
    {
        double feet = length.Feet;
        double errorFeet = standardError.Feet;
        return new MeasuredLength(
            Guard.AtLeast(feet, 0, "ft", nameof(length)),
            0,
            Guard.AtLeast(errorFeet, 0, "ft", nameof(standardError)),
            false
        );
    }

    /// <summary>Steps walked along it and the feet of each; null where it was not paced with a calibrated step.</summary>
    internal (double Steps, double StepFeet)? Walked { get; private init; }

    internal static MeasuredLength FromPaces(
        double feet,
        double sharedRelativeError,
        double ownErrorFeet,
        (double Steps, double StepFeet)? walked = null
    ) => new(feet, sharedRelativeError, ownErrorFeet, true) { Walked = walked };

    /// <summary>The length without its error.</summary>
    /// <returns>The length.</returns>
    public Length ToLength() => Length.FromFeet(Feet);

    /// <summary>As it was measured: in paces where it was paced.</summary>
    internal string InOwnUnit =>
        Walked is var (steps, _) ? string.Create(CultureInfo.InvariantCulture, $"{steps:0.##} paces") : ToString();

    /// <summary>Invariant text such as <c>120.5 ft</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Feet:0.##} ft");

    static string IJsonText<MeasuredLength>.ToJsonText(MeasuredLength value) =>
        value.IsPaced
            ? throw new NotSupportedException(
                "A paced length rests on its steps and their calibration: keep the StepCount, or the length alone by ToLength."
            )
        : value.HasError ? $"{ExactText.Of(value.Feet)} +- {ExactText.Of(value.OwnErrorFeet)} ft"
        : $"{ExactText.Of(value.Feet)} ft";

    static MeasuredLength IJsonText<MeasuredLength>.FromJsonText(string text)
    {
        string number = ExactText.Before(text, " ft");
        var (feet, error) = number.Contains(" +- ", StringComparison.Ordinal) ? ExactText.Halves(number, " +- ") : (number, "0");
        return new(
            Guard.AtLeast(ExactText.Number(feet), 0, "ft", nameof(text)),
            0,
            Guard.AtLeast(ExactText.Number(error), 0, "ft", nameof(text)),
            false
        );
    }
}
