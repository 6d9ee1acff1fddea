namespace PlotAgronomy.Sample.Commands;

/// <summary>Asks a person, and asks again when an answer cannot be read.</summary>
internal sealed class Interview(TextReader answers, TextWriter output)
{
    internal delegate bool Reader<T>(string text, out T value, out string problem);

    /// <summary>Says what to have at hand, before the first of all questions.</summary>
    internal void Open()
    {
        output.WriteLine(
            "Have at hand what you wrote down: weights from the scale, times from the stopwatch, lengths from the tape."
        );
        output.WriteLine(
            "Fill the hopper at least half, keep the crank's rhythm and your pace as in the plot, and measure three times at "
                + "one setting."
        );
        output.WriteLine("With treated seed or dusty material wear what its tag or label asks for.");
        output.WriteLine("Give every amount with its unit. A blank line leaves out what may be left out.");
        output.WriteLine();
    }

    /// <summary>Parts the questions from the result.</summary>
    internal void Close() => output.WriteLine();

    internal T Ask<T>(CalibrationQuestion question, Reader<T> read)
    {
        while (true)
        {
            output.WriteLine(question.Question);
            string text = answers.ReadLine() ?? throw new BadAnswerException($"--{question.Name} is missing: {question.Help}");
            if (read(text, out var value, out string problem))
            {
                return value;
            }

            output.WriteLine($"  {problem}");
        }
    }
}
