namespace PlotAgronomy.Sample.Commands;

/// <summary>Reads one answer at a time: the option when it was given, else the person when it is needed or nothing was given at
/// all.</summary>
internal sealed class AnswerSheet(Dictionary<string, string> given, Interview interview)
{
    private readonly bool askEverything = given.Count == 0;

    /// <summary>Tells a person who is asked everything what to have at hand.</summary>
    internal void Open()
    {
        if (askEverything)
        {
            interview.Open();
        }
    }

    /// <summary>Parts the questions from what follows.</summary>
    internal void Close()
    {
        if (askEverything)
        {
            interview.Close();
        }
    }

    internal bool Has(CalibrationQuestion question) => given.ContainsKey(question.Name);

    internal T Required<T>(CalibrationQuestion question, Interview.Reader<T> read) =>
        given.TryGetValue(question.Name, out string? text) ? FromOption(question, text, read) : interview.Ask(question, read);

    internal T? Optional<T>(CalibrationQuestion question, Interview.Reader<T> read)
        where T : class
    {
        if (given.TryGetValue(question.Name, out string? text))
        {
            return FromOption(question, text, read);
        }

        return askEverything ? interview.Ask(question, BlankAsNull(read)).Value : null;
    }

    internal T? OptionalValue<T>(CalibrationQuestion question, Interview.Reader<T> read)
        where T : struct
    {
        if (given.TryGetValue(question.Name, out string? text))
        {
            return FromOption(question, text, read);
        }

        if (!askEverything)
        {
            return null;
        }

        var (answered, value) = interview.Ask(question, BlankAsNull(read));
        return answered ? value : null;
    }

    private static T FromOption<T>(CalibrationQuestion question, string text, Interview.Reader<T> read) =>
        read(text, out var value, out string problem) ? value : throw new BadAnswerException($"--{question.Name}: {problem}");

    private static Interview.Reader<(bool Answered, T? Value)> BlankAsNull<T>(Interview.Reader<T> read) =>
        (string text, out (bool, T?) answer, out string problem) =>
        {
            if (string.IsNullOrWhiteSpace(text))
            {
                (answer, problem) = ((false, default), "");
                return true;
            }

            bool good = read(text, out var value, out problem);
            answer = (good, value);
            return good;
        };
}
