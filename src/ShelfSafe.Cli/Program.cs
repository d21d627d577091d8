using System.Text;
using ShelfSafe.Cli;

UTF8Encoding utf8 = new(encoderShouldEmitUTF8Identifier: false);
using StreamWriter output = new(Console.OpenStandardOutput(), utf8, bufferSize: 16_384) { NewLine = "\n" };
using StreamWriter error = new(Console.OpenStandardError(), utf8) { NewLine = "\n", AutoFlush = true };
return new App(Console.OpenStandardInput, Terminal.Read()).Run(args, output, error);
