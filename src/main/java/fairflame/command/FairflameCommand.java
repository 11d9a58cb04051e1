package fairflame.command;

import picocli.CommandLine.Command;

/** The root: without a subcommand it prints the help. */
@Command(
        name = "fairflame",
        mixinStandardHelpOptions = true,
        version = "fairflame 0.1.0",
        description = "From the readings at a gas pool heater to a priced, signed repair and an invoice.",
        footerHeading = "%nExit codes:%n",
        footer = {
            "  0  done",
            "  1  the input was refused; the message names file, field, value and what is allowed",
            "  2  the command line itself is wrong",
            "  3  stop-work: dangerous evidence, no price may be made",
            "",
            "This program advises a trained technician. Local code, the permit office and the licensed professional decide."
        },
        subcommands = {
            DemoCommand.class,
            CapacityCommand.class,
            SizeCommand.class,
            DiagnoseCommand.class,
            QuoteCommand.class,
            PlanCommand.class,
            ReconcileCommand.class,
            AirTestCommand.class,
            SignCommand.class,
            AwayCommand.class,
            PinCommand.class,
            PhotoCommand.class,
            InvoiceCommand.class,
            PayCommand.class,
            VerifyCommand.class,
            RepriceCommand.class,
            ActualCommand.class,
            ConversionCommands.Compare.class,
            ConversionCommands.ChangeSigned.class,
            ConversionCommands.Part.class,
            ConversionCommands.Credit.class,
            KnowledgeCommand.class,
            CatalogCommand.class,
            PermitCommand.class,
            CalendarCommand.class,
            OrderCommand.class,
            LedgerCommands.AgeingList.class,
            LedgerCommands.StatementOf.class,
            LedgerCommands.Refund.class,
            LedgerCommands.WriteOff.class,
            LedgerCommands.Journal.class,
            LedgerCommands.Ubl.class,
            LedgerCommands.Report.class,
            HoursCommand.class,
            PacketCommand.class,
            DataCommands.Export.class,
            DataCommands.Import.class,
            DataCommands.Backup.class,
            DataCommands.Restore.class
        })
final class FairflameCommand extends CommandGroup {}
