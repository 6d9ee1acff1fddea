using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>Checks public input once, at the edge. Messages name the limit and the unit.</summary>
internal static class Guard
{
    /// <summary>What a refusal says to a person, without the name of a parameter.</summary>
    internal static string Said(Exception refused) => refused.Message.Split(" (Parameter", 2)[0].ReplaceLineEndings(" ");

    internal static double Finite(double value, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) ? value : throw OutOfRange(name, value, $"Must be a finite number ({unit}).");

    internal static double AtLeast(
        double value,
        double min,
        string unit,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        double.IsFinite(value) && value >= min
            ? value
            : throw OutOfRange(name, value, $"Must be a finite number of at least {min} {unit}.");

    internal static double Above(
        double value,
        double limit,
        string unit,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        double.IsFinite(value) && value > limit
            ? value
            : throw OutOfRange(name, value, $"Must be a finite number above {limit} {unit}.");

    internal static double Between(
        double value,
        double min,
        double max,
        string unit,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        double.IsFinite(value) && value >= min && value <= max
            ? value
            : throw OutOfRange(name, value, $"Must be a finite number from {min} to {max} {unit}.");

    internal static double AboveUpTo(
        double value,
        double limit,
        double max,
        string unit,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        double.IsFinite(value) && value > limit && value <= max
            ? value
            : throw OutOfRange(name, value, $"Must be a finite number above {limit} and at most {max} {unit}.");

    internal static double Inside(
        double value,
        double limit,
        double top,
        string unit,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        double.IsFinite(value) && value > limit && value < top
            ? value
            : throw OutOfRange(name, value, $"Must be a finite number above {limit} and below {top} {unit}.");

    internal static int AtLeast(int value, int min, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= min ? value : throw OutOfRange(name, value, $"Must be at least {min} {unit}.");

    internal static decimal AtLeast(
        decimal value,
        decimal min,
        string unit,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) => value >= min ? value : throw OutOfRange(name, value, $"Must be at least {min} {unit}.");

    internal static decimal Within(
        decimal value,
        decimal min,
        decimal max,
        string unit,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) => value >= min && value <= max ? value : throw OutOfRange(name, value, $"Must be from {min} to {max} {unit}.");

    internal static Mass Positive(Mass value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        double pounds = value.Pounds;
        Above(pounds, 0, "lb", name);
        return value;
    }

    internal static Area Positive(Area value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        double acres = value.Acres;
        Above(acres, 0, "ac", name);
        return value;
    }

    internal static Length Positive(Length value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        double feet = value.Feet;
        Above(feet, 0, "ft", name);
        return value;
    }

    internal static Volume Positive(Volume value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        double gallons = value.UsGallons;
        Above(gallons, 0, "gal", name);
        return value;
    }

    internal static Density Positive(Density value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        double poundsPerCubicFoot = value.PoundsPerCubicFoot;
        Above(poundsPerCubicFoot, 0, "lb/ft3", name);
        return value;
    }

    internal static T Defined<T>(T value, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : struct, Enum =>
        EnumWords<T>.Has(value)
            ? value
            : throw OutOfRange(name, value, $"Must be one of: {string.Join(", ", Enum.GetNames<T>())}.");

    /// <summary>What is not stated stays null.</summary>
    internal static T? Defined<T>(T? value, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : struct, Enum => value is { } stated ? Defined(stated, name) : null;

    internal static string NotBlank(string? value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(value, name);
        return value;
    }

    internal static T NotNull<T>(T? value, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(value, name);
        return value;
    }

    /// <summary>A list that was made, if only as an empty one, and has no gaps.</summary>
    internal static ImmutableArray<T> Listed<T>(
        ImmutableArray<T> value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    )
        where T : class =>
        !value.IsDefault && !value.Contains(null!)
            ? value
            : throw new ArgumentException("Must be a list without a null in it; write [] for none.", name);

    /// <summary>A list of values that was made, if only as an empty one.</summary>
    internal static ImmutableArray<T> Made<T>(
        ImmutableArray<T> value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    )
        where T : struct => !value.IsDefault ? value : throw new ArgumentException("Must be a list; write [] for none.", name);

    /// <summary>A list without a null in it; it may be empty.</summary>
    internal static IReadOnlyList<T> WithoutNulls<T>(
        IReadOnlyList<T>? value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    )
    {
        ArgumentNullException.ThrowIfNull(value, name);
        for (int i = 0; default(T) is null && i < value.Count; i++)
        {
            if (value[i] is null)
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"Must hold no null; item {i + 1} is one."),
                    name
                );
            }
        }

        return value;
    }

    internal static IReadOnlyList<T> NotEmpty<T>(
        IReadOnlyList<T>? value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    )
    {
        return WithoutNulls(value, name).Count > 0 ? value! : throw new ArgumentException("Must hold at least one item.", name);
    }

    private static ArgumentOutOfRangeException OutOfRange(string? name, object value, FormattableString message) =>
        new(name, value, message.ToString(CultureInfo.InvariantCulture));
}
