namespace PlotAgronomy.Record;

/// <summary>Collects rows of case, meaning and value.</summary>
internal sealed class Recorder
{
    private const string OnlyAnswer = "answer";
    private const string Refused = "refused";

    private readonly List<RecordedRow> rows = [];
    private readonly HashSet<(string, string)> taken = [];

    internal IReadOnlyList<RecordedRow> Rows => rows;

    /// <summary>Adds a value, or everything a result holds.</summary>
    /// <remarks>A number that must stay the same to the last digit is handed in as a decimal.</remarks>
    public void Add(string @case, string meaning, object? value)
    {
        foreach (var (inner, word) in Flattening.Of(meaning, value))
        {
            string told = inner.Length == 0 ? OnlyAnswer : inner;
            Put(new RecordedRow(@case, told, word));
        }
    }

    /// <summary>Adds what a sum gives, or that it was refused; what kind of refusal may change.</summary>
    public void Call(string @case, Func<object?> sum)
    {
        object? value;
        try
        {
            value = sum();
        }
        catch (Exception refusal) when (IsRefusal(refusal))
        {
            Add(@case, OnlyAnswer, Refused);
            return;
        }

        Add(@case, "", value);
    }

    internal void Append(Recorder other)
    {
        foreach (var row in other.rows)
        {
            Put(row);
        }
    }

    /// <summary>A refusal is an answer; any other exception is a fault and stops the record.</summary>
    private static bool IsRefusal(Exception thrown) =>
        thrown is ArgumentException or InvalidOperationException or KeyNotFoundException;

    private void Put(RecordedRow row)
    {
        if (!taken.Add((row.Case, row.Meaning)))
        {
            throw new ArgumentException($"Recorded twice: case '{row.Case}', meaning '{row.Meaning}'.");
        }

        rows.Add(row);
    }
}
