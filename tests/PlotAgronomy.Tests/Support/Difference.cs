using System.Collections;
using System.Globalization;
using System.Reflection;
using UnitsNet;

namespace PlotAgronomy.Tests.Support;

/// <summary>Lays two things side by side by their public properties and tells the first that differs.</summary>
internal sealed class Difference
{
    private readonly HashSet<(object, object)> compared = [];

    /// <summary>The path of the first property that differs, with both values; null when all are equal to the last bit.</summary>
    internal static string? Between(object? one, object? other) => new Difference().Find("", one, other);

    private string? Find(string path, object? one, object? other)
    {
        if (ReferenceEquals(one, other))
        {
            return null;
        }

        if (one is null || other is null || one.GetType() != other.GetType())
        {
            return Say(path, one, other);
        }

        if (one is IQuantity quantity)
        {
            return quantity.Value.Equals(((IQuantity)other).Value) && quantity.Unit.Equals(((IQuantity)other).Unit) ? null : Say(path, one, other);
        }

        if (one is string || one.GetType().IsPrimitive || one is Enum or decimal or DateOnly or TimeSpan or Delegate)
        {
            return one is Delegate || one.Equals(other) ? null : Say(path, one, other);
        }

        if (one is IEnumerable items)
        {
            var (mine, theirs) = (items.Cast<object?>().ToList(), ((IEnumerable)other).Cast<object?>().ToList());
            return mine.Count != theirs.Count
                ? Say($"{path}.Count", mine.Count, theirs.Count)
                : mine.Select((m, i) => Find($"{path}[{i}]", m, theirs[i])).FirstOrDefault(d => d is not null);
        }

        if (!one.GetType().IsValueType && !compared.Add((one, other)))
        {
            return null;
        }

        return one.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.GetIndexParameters().Length == 0)
            .Select(p => Find($"{path}.{p.Name}", p.GetValue(one), p.GetValue(other)))
            .FirstOrDefault(d => d is not null);
    }

    private static string Say(string path, object? one, object? other) =>
        string.Create(CultureInfo.InvariantCulture, $"{path}: {Print(one)} against {Print(other)}");

    private static string Print(object? value) => value switch
    {
        null => "nothing",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        IQuantity quantity => quantity.Value.ToString("R", CultureInfo.InvariantCulture) + " " + quantity.Unit,
        _ => $"{value}",
    };
}
