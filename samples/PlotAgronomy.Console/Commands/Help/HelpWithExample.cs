using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace PlotAgronomy.Sample.Commands;

/// <summary>The library's help, and one line to type.</summary>
internal sealed class HelpWithExample(HelpAction usual) : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        int code = usual.Invoke(parseResult);
        var output = parseResult.InvocationConfiguration.Output;
        var example = Example.Of(parseResult.CommandResult.Command);
        output.WriteLine("Example:");
        output.WriteLine($"  plot-agronomy {example.Line}");
        output.WriteLine($"  {example.Gives}");
        return code;
    }

    /// <summary>Has every command teach by an example, and no option under names of other systems.</summary>
    internal static void AddTo(RootCommand root)
    {
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new HelpWithExample((HelpAction)help.Action!);
        help.Aliases.Clear();
        help.Aliases.Add("-h");
        help.Aliases.Add("-?");
    }
}
